package shinline.metrics.analysis;

import java.util.Optional;
import java.util.function.Function;
import shinline.metrics.analysis.SetRefusal.PlainSetRefusal;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.correction.CorrectionTable;
import shinline.metrics.correction.JointCentreCorrection;
import shinline.metrics.plausibility.BodyLimits;
import shinline.metrics.plausibility.PlausibleTrack;
import shinline.metrics.plausibility.ShoulderSight;
import shinline.metrics.track.LegIdentity;
import shinline.metrics.track.LegTrack;
import shinline.metrics.track.RawTrack;
import shinline.metrics.view.ArmReach;
import shinline.metrics.view.Attitude;
import shinline.metrics.view.SideView;

/**
 * From a raw track to the athlete's body, the same for a set and for a posture: which leg is in
 * front, what a body can do, how the camera stood, cleaning, joint centres.
 *
 * @param cleaning of a track that holds what a body can do only
 */
record AthleteReading(Calibration calibration, Function<LegTrack, CleanTrack> cleaning) {

  /** What came of it. */
  sealed interface Outcome {
    default <T> T fold(Function<Athlete, T> seen, Function<SetRefusal, T> refused) {
      return this instanceof Athlete a ? seen.apply(a) : refused.apply(((Refused) this).why());
    }
  }

  /**
   * The athlete as seen.
   *
   * @param legs what a body can do of what was seen
   */
  record Athlete(LegTrack legs, SetSight sight, Attitude attitude, Body body) implements Outcome {}

  /** Why nothing can be measured. */
  record Refused(SetRefusal why) implements Outcome {}

  Outcome of(RawTrack raw, SetRequest request, ClipObservations seen) {
    ShoulderSight shoulders = ShoulderSight.of(raw, calibration);
    RawTrack believed = shoulders.believed(raw);
    double yawDeg = SideView.yawDeg(believed, calibration);
    double refusedDeg = calibration.value(CalibrationKey.SIDE_VIEW_REFUSED);
    if (yawDeg > refusedDeg) {
      return new Refused(new SetRefusal.OffSide(yawDeg, refusedDeg));
    }
    return new LegIdentity(calibration)
        .resolve(raw, request.overrides().legs())
        .fold(
            resolved -> {
              LegTrack legs = resolved.track();
              ArmReach arms = ArmReach.of(raw, legs.facing().side(), calibration);
              Attitude attitude =
                  Attitude.of(seen.ofCamera(request.overrides()), believed, legs, calibration);
              return of(legs, shoulders, arms, attitude, seen);
            },
            unresolved -> new Refused(new SetRefusal.LegsAlike(unresolved.doubt())));
  }

  private Outcome of(
      LegTrack raw,
      ShoulderSight shoulders,
      ArmReach arms,
      Attitude attitude,
      ClipObservations seen) {
    PlausibleTrack plausible = PlausibleTrack.of(raw, BodyLimits.DEFAULT);
    CleanTrack corrected =
        new JointCentreCorrection(CorrectionTable.of(calibration))
            .correct(cleaning.apply(plausible.track()).toSagittalPlane(attitude.view()));
    SetSight sight = new SetSight(raw, plausible.implausible(), shoulders, seen.doubtful());
    Optional<Body> body = Body.of(corrected, attitude.view(), shoulders, arms, calibration);
    return body.isPresent()
        ? new Athlete(plausible.track(), sight, attitude, body.get())
        : new Refused(PlainSetRefusal.NEVER_WHOLE);
  }
}
