package shinline.metrics.analysis;

import java.util.List;
import java.util.Optional;
import shinline.metrics.analysis.SetRefusal.PlainSetRefusal;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.cleaning.StillCleaning;
import shinline.metrics.correction.CorrectionTable;
import shinline.metrics.correction.JointCentreCorrection;
import shinline.metrics.plausibility.BodyLimits;
import shinline.metrics.plausibility.PlausibleTrack;
import shinline.metrics.plausibility.ShoulderSight;
import shinline.metrics.track.LegIdentity;
import shinline.metrics.track.LegTrack;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawTrack;
import shinline.metrics.view.ArmReach;
import shinline.metrics.view.Attitude;
import shinline.metrics.view.SideView;

/**
 * The whole way from many looks at one still picture to a measured and judged posture: the same as
 * a set's, but for what needs a movement.
 */
public final class PostureAnalysis {
  private final Calibration calibration;

  /**
   * @param calibration of the pose model that looked
   */
  public PostureAnalysis(Calibration calibration) {
    this.calibration = calibration;
  }

  /**
   * Measures and judges a posture.
   *
   * @param looks at one and the same picture, each in another way, at even times
   */
  public PostureOutcome measure(RawTrack looks, SetRequest request, ClipObservations seen) {
    List<RawPose> found = looks.poses().stream().filter(p -> !p.nobody()).toList();
    if (found.isEmpty()) {
      return refused(PlainSetRefusal.NOBODY_FOUND);
    }
    if (2 * found.size() < looks.poses().size()) {
      return refused(PlainSetRefusal.SELDOM_FOUND);
    }
    ShoulderSight shoulders = ShoulderSight.of(looks, calibration);
    double yawDeg = SideView.yawDeg(shoulders.believed(looks), calibration);
    double refusedDeg = calibration.value(CalibrationKey.SIDE_VIEW_REFUSED);
    if (yawDeg > refusedDeg) {
      return refused(new SetRefusal.OffSide(yawDeg, refusedDeg));
    }
    return new LegIdentity(calibration)
        .resolve(looks, request.overrides().legs())
        .fold(
            resolved -> measure(looks, resolved.track(), shoulders, request, seen),
            unresolved -> refused(new SetRefusal.LegsAlike(unresolved.doubt())));
  }

  private PostureOutcome measure(
      RawTrack looks,
      LegTrack raw,
      ShoulderSight shoulders,
      SetRequest request,
      ClipObservations seen) {
    Attitude attitude =
        Attitude.of(
            seen.ofCamera(request.overrides()), shoulders.believed(looks), raw, calibration);
    PlausibleTrack plausible = PlausibleTrack.of(raw, BodyLimits.DEFAULT);
    LegTrack legs = plausible.track();
    CleanTrack corrected =
        new JointCentreCorrection(CorrectionTable.of(calibration))
            .correct(StillCleaning.clean(legs).toSagittalPlane(attitude.view()));
    ArmReach arms = ArmReach.of(looks, raw.facing().side(), calibration);
    Optional<Body> body = Body.of(corrected, attitude.view(), shoulders, arms, calibration);
    if (body.isEmpty()) {
      return refused(PlainSetRefusal.NEVER_WHOLE);
    }
    SetSight sight = new SetSight(raw, plausible.implausible(), shoulders, seen.doubtful());
    Scale scale = Scale.of(request.scale(), seen.disc(), body.get());
    return new PostureOutcome.Measured(
        new PostureMeasuring(legs, body.get(), sight, scale, attitude).result(request.target()));
  }

  private static PostureOutcome refused(SetRefusal why) {
    return new PostureOutcome.NotMeasured(why);
  }
}
