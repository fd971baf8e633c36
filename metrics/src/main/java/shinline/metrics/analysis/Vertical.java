package shinline.metrics.analysis;

import java.util.Optional;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.geometry.Angle;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.result.SetUp.RollSource;
import shinline.metrics.track.Side;

/**
 * Where up is.
 *
 * @param sigmaDeg standard deviation of {@code rollDeg}
 */
record Vertical(double rollDeg, double sigmaDeg, RollSource source) {

  static Vertical of(SetRequest request, ClipObservations seen, Calibration calibration) {
    Optional<Double> given = request.overrides().rollDeg();
    if (given.isPresent()) {
      return new Vertical(
          given.get(), calibration.value(CalibrationKey.INTERVAL_GIVEN_ROLL), RollSource.GIVEN);
    }
    return seen.roll()
        .map(r -> new Vertical(r.rollDeg(), r.plusMinusDeg() / 1.96, RollSource.BACKGROUND))
        .orElse(
            new Vertical(
                0, calibration.value(CalibrationKey.INTERVAL_UNKNOWN_ROLL), RollSource.NONE));
  }

  /**
   * The view onto the athlete's side plane.
   *
   * @param yawDeg how far off the side the camera looks
   */
  ViewGeometry view(Side facing, double yawDeg) {
    // A picture turned clockwise leans forward when the athlete faces right, else backward.
    double sign = facing == Side.RIGHT ? 1 : -1;
    return new ViewGeometry(Angle.ofDegrees(yawDeg), Angle.ZERO, Angle.ofDegrees(sign * rollDeg));
  }
}
