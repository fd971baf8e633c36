package shinline.metrics.track;

import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;

/**
 * How the legs are told apart. Lengths are shares of the athlete's stature in the picture.
 *
 * @param leastConfidence a point the model trusts less than this counts as not seen
 * @param apart two candidates for a joint closer than this are on one and the same leg
 * @param splitApart feet at least this far apart are in a split stance
 * @param offPlant a front foot point farther than this from where the foot is planted is no
 *     sighting of it
 * @param offRearPlant the same for the rear foot
 * @param offLength a knee that makes its shank this much longer or shorter is no sighting of it
 * @param lengthSpread spread of a shank's length from frame to frame
 * @param leastSplit share of the frames that must show a split stance
 */
public record LegIdentityParameters(
    double leastConfidence,
    double apart,
    double splitApart,
    double offPlant,
    double offRearPlant,
    double offLength,
    double lengthSpread,
    double leastSplit) {
  /** Those of a calibration. */
  public static LegIdentityParameters of(Calibration calibration) {
    return new LegIdentityParameters(
        calibration.value(CalibrationKey.LEGS_LEAST_CONFIDENCE),
        calibration.value(CalibrationKey.LEGS_APART),
        calibration.value(CalibrationKey.LEGS_SPLIT_APART),
        calibration.value(CalibrationKey.LEGS_OFF_PLANT),
        calibration.value(CalibrationKey.LEGS_OFF_REAR_PLANT),
        calibration.value(CalibrationKey.LEGS_OFF_LENGTH),
        calibration.value(CalibrationKey.LEGS_LENGTH_SPREAD),
        calibration.value(CalibrationKey.LEGS_LEAST_SPLIT));
  }

  public LegIdentityParameters {
    if (!(leastConfidence >= 0 && apart > 0 && splitApart > apart && offPlant > 0)
        || !(offRearPlant > 0 && offLength > 0)
        || !(lengthSpread > 0 && leastSplit > 0 && leastSplit <= 1)) {
      throw new IllegalArgumentException("leg identity parameters out of range");
    }
  }
}
