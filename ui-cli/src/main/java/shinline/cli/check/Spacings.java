package shinline.cli.check;

import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.vision.observation.LookSpacing;

/** How closely the pose model of a calibration has to look. */
public final class Spacings {
  private Spacings() {}

  /** The three values of the calibration. */
  public static LookSpacing of(Calibration calibration) {
    return new LookSpacing(
        (int) calibration.value(CalibrationKey.SAMPLING_EVERY),
        calibration.value(CalibrationKey.SAMPLING_PACE),
        calibration.value(CalibrationKey.SAMPLING_STILL));
  }
}
