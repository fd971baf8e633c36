package shinline.metrics.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.interval.IntervalModel;
import shinline.metrics.reps.BottomWindow;
import shinline.metrics.result.Measure;
import shinline.metrics.result.SetUp;
import shinline.metrics.result.SetUp.CameraHold;
import shinline.metrics.result.Warning;
import shinline.metrics.track.LegTrack;
import shinline.metrics.view.Attitude;

/** Tells how a set or a posture was filmed, and what that leaves in doubt. */
record SetUpReading(LegTrack legs, Body body, Scale scale, Attitude attitude, CameraSway sway) {

  /**
   * @param bottoms where the shin is read
   * @param ofBack what was not seen of the back
   */
  SetUp of(CameraHold hold, Stream<BottomWindow> bottoms, Optional<Warning> ofBack) {
    double yawDeg = attitude.view().yaw().degrees();
    List<Warning> warnings = new ArrayList<>();
    if (Math.abs(yawDeg) > body.calibration().value(CalibrationKey.SIDE_VIEW_WARNED)) {
      warnings.add(new Warning.OffSide(Math.abs(yawDeg)));
    }
    unsurePitch(bottoms).ifPresent(warnings::add);
    scale.warning().ifPresent(warnings::add);
    if (sway.noticed()) {
      warnings.add(Warning.PlainWarning.CAMERA_MOVED);
    }
    if (!legs.sideIsClear()) {
      warnings.add(new Warning.LegsUnsure(legs.frontLeg()));
    }
    if (legs.facing().agreement() < body.calibration().value(CalibrationKey.LEGS_CLEAR_FACING)) {
      warnings.add(Warning.PlainWarning.FACING_UNSURE);
    }
    ofBack.ifPresent(warnings::add);
    return new SetUp(
        legs.facing().side(),
        legs.frontLeg(),
        legs.frontLegNearCamera(),
        rearFoot(),
        new SetUp.Camera(
            attitude.roll().deg(),
            attitude.rollSource(),
            attitude.pitch().deg(),
            attitude.pitchSource(),
            attitude.yaw().sigmaDeg() <= body.calibration().value(CalibrationKey.SIDE_VIEW_UNSURE)
                ? Optional.of(yawDeg)
                : Optional.empty(),
            attitude.view()),
        scale.cmPerPx(),
        scale.source(),
        hold,
        legs.shown(),
        warnings);
  }

  /** What would mend a pitch that makes the shin unsure. */
  private Optional<Warning> unsurePitch(Stream<BottomWindow> bottoms) {
    AttitudeDoubt doubt = new AttitudeDoubt(body, attitude, 0);
    double plusMinus =
        IntervalModel.NINETY_FIVE
            * bottoms
                .mapToDouble(w -> doubt.sigma(Measure.SHIN, w, Attitude.Doubt.PITCH))
                .max()
                .orElse(0);
    boolean matters = plusMinus >= body.calibration().value(CalibrationKey.CAMERA_SHIN_DOUBT);
    return attitude.pitchSource() == Attitude.Source.NONE && matters
        ? Optional.of(new Warning.PitchUnknown(plusMinus))
        : Optional.empty();
  }

  private SetUp.RearFoot rearFoot() {
    return body.benchRise().isPresent() ? SetUp.RearFoot.BENCH : SetUp.RearFoot.FLOOR;
  }
}
