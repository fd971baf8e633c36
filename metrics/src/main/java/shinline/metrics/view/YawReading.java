package shinline.metrics.view;

import java.util.Optional;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;

/**
 * How far the camera is off the athlete's side, from what the shoulders and the wall behind tell.
 * Either may be wrong altogether (shoulders turned by a reach, an athlete who does not line up with
 * the wall), so each is a mixture of a close and a wide normal distribution, and the answer is the
 * mean of the product over all angles: where the two disagree it is wide.
 */
final class YawReading {
  private static final double REACH_DEG = 60;
  private static final double STEP_DEG = 0.25;

  /** The wide part of a mixture: hardly anything is told. */
  private static final double WIDE_DEG = 20;

  private final Calibration calibration;

  YawReading(Calibration calibration) {
    this.calibration = calibration;
  }

  /** Yaw, plus when the camera stands ahead of the athlete. */
  AngleEstimate of(Optional<AngleEstimate> trunk, Optional<AngleEstimate> wall) {
    double sum = 0;
    double first = 0;
    double second = 0;
    for (double deg = -REACH_DEG; deg <= REACH_DEG; deg += STEP_DEG) {
      double weight =
          normal(deg, new AngleEstimate(0, calibration.value(CalibrationKey.CAMERA_YAW_SPREAD)));
      if (trunk.isPresent()) {
        weight *= mixture(deg, trunk.get(), calibration.value(CalibrationKey.TRUNK_YAW_ODD));
      }
      if (wall.isPresent()) {
        AngleEstimate lined =
            new AngleEstimate(
                wall.get().deg(),
                Math.hypot(
                    wall.get().sigmaDeg(), calibration.value(CalibrationKey.CAMERA_ALONG_WALL)));
        weight *= mixture(deg, lined, calibration.value(CalibrationKey.CAMERA_NOT_ALONG_WALL));
      }
      sum += weight;
      first += weight * deg;
      second += weight * deg * deg;
    }
    double mean = first / sum;
    return new AngleEstimate(mean, Math.sqrt(Math.max(0, second / sum - mean * mean)));
  }

  private static double mixture(double deg, AngleEstimate told, double oddShare) {
    return (1 - oddShare) * normal(deg, told)
        + oddShare * normal(deg, new AngleEstimate(told.deg(), WIDE_DEG));
  }

  private static double normal(double deg, AngleEstimate about) {
    double z = (deg - about.deg()) / about.sigmaDeg();
    return Math.exp(-0.5 * z * z) / about.sigmaDeg();
  }
}
