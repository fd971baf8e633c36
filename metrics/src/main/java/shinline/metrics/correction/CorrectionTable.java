package shinline.metrics.correction;

import java.util.EnumMap;
import java.util.Map;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;

/**
 * Where the joint centres lie against the model's landmarks, as shares of the athlete's trunk,
 * thigh and shank together. {@code along} is up the segment, {@code ahead} is to its front (for a
 * standing segment: forward).
 *
 * <p>Fitted by least squares over every frame of clips with truth, each clip with the same weight.
 * Constant offsets sufficed but for the hips, whose offset grows as the hip bends; more terms did
 * worse on the clip left out (docs/decisions/0006-joint-centres.md). How good the offsets are on
 * clips left out of the fit is told in docs/accuracy.md.
 *
 * @param hip of mid-hip, in the frame of the trunk
 * @param hipBend added to {@code hip} for each radian of hip flexion
 * @param shoulder of mid-shoulder, in the frame of the trunk
 * @param frontHip in the frame of the trunk
 * @param frontHipBend added to {@code frontHip} for each radian of hip flexion
 * @param frontKnee in the frame of the shank
 * @param frontAnkle in the frame of the shank
 * @param frontToe in the frame of the picture
 * @param frontHeel in the frame of the picture
 * @param rearKnee in the frame of the picture
 */
public record CorrectionTable(
    Offset hip,
    Offset hipBend,
    Offset shoulder,
    Offset frontHip,
    Offset frontHipBend,
    Offset frontKnee,
    Offset frontAnkle,
    Offset frontToe,
    Offset frontHeel,
    Offset rearKnee) {

  /** An offset, share of trunk, thigh and shank together. */
  public record Offset(double along, double ahead) {}

  /** The offsets of a calibration. */
  public static CorrectionTable of(Calibration calibration) {
    return new CorrectionTable(
        offset(
            calibration, CalibrationKey.OFFSET_MID_HIP_ALONG, CalibrationKey.OFFSET_MID_HIP_AHEAD),
        offset(
            calibration,
            CalibrationKey.OFFSET_MID_HIP_BEND_ALONG,
            CalibrationKey.OFFSET_MID_HIP_BEND_AHEAD),
        offset(
            calibration,
            CalibrationKey.OFFSET_MID_SHOULDER_ALONG,
            CalibrationKey.OFFSET_MID_SHOULDER_AHEAD),
        offset(
            calibration,
            CalibrationKey.OFFSET_FRONT_HIP_ALONG,
            CalibrationKey.OFFSET_FRONT_HIP_AHEAD),
        offset(
            calibration,
            CalibrationKey.OFFSET_FRONT_HIP_BEND_ALONG,
            CalibrationKey.OFFSET_FRONT_HIP_BEND_AHEAD),
        offset(
            calibration,
            CalibrationKey.OFFSET_FRONT_KNEE_ALONG,
            CalibrationKey.OFFSET_FRONT_KNEE_AHEAD),
        offset(
            calibration,
            CalibrationKey.OFFSET_FRONT_ANKLE_ALONG,
            CalibrationKey.OFFSET_FRONT_ANKLE_AHEAD),
        offset(
            calibration,
            CalibrationKey.OFFSET_FRONT_TOE_ALONG,
            CalibrationKey.OFFSET_FRONT_TOE_AHEAD),
        offset(
            calibration,
            CalibrationKey.OFFSET_FRONT_HEEL_ALONG,
            CalibrationKey.OFFSET_FRONT_HEEL_AHEAD),
        offset(
            calibration,
            CalibrationKey.OFFSET_REAR_KNEE_ALONG,
            CalibrationKey.OFFSET_REAR_KNEE_AHEAD));
  }

  private static Offset offset(
      Calibration calibration, CalibrationKey along, CalibrationKey ahead) {
    return new Offset(calibration.value(along), calibration.value(ahead));
  }

  /** The same numbers by the names they have in a calibration. */
  public Map<CalibrationKey, Double> values() {
    Map<CalibrationKey, Double> values = new EnumMap<>(CalibrationKey.class);
    values.put(CalibrationKey.OFFSET_MID_HIP_ALONG, hip.along());
    values.put(CalibrationKey.OFFSET_MID_HIP_AHEAD, hip.ahead());
    values.put(CalibrationKey.OFFSET_MID_HIP_BEND_ALONG, hipBend.along());
    values.put(CalibrationKey.OFFSET_MID_HIP_BEND_AHEAD, hipBend.ahead());
    values.put(CalibrationKey.OFFSET_MID_SHOULDER_ALONG, shoulder.along());
    values.put(CalibrationKey.OFFSET_MID_SHOULDER_AHEAD, shoulder.ahead());
    values.put(CalibrationKey.OFFSET_FRONT_HIP_ALONG, frontHip.along());
    values.put(CalibrationKey.OFFSET_FRONT_HIP_AHEAD, frontHip.ahead());
    values.put(CalibrationKey.OFFSET_FRONT_HIP_BEND_ALONG, frontHipBend.along());
    values.put(CalibrationKey.OFFSET_FRONT_HIP_BEND_AHEAD, frontHipBend.ahead());
    values.put(CalibrationKey.OFFSET_FRONT_KNEE_ALONG, frontKnee.along());
    values.put(CalibrationKey.OFFSET_FRONT_KNEE_AHEAD, frontKnee.ahead());
    values.put(CalibrationKey.OFFSET_FRONT_ANKLE_ALONG, frontAnkle.along());
    values.put(CalibrationKey.OFFSET_FRONT_ANKLE_AHEAD, frontAnkle.ahead());
    values.put(CalibrationKey.OFFSET_FRONT_TOE_ALONG, frontToe.along());
    values.put(CalibrationKey.OFFSET_FRONT_TOE_AHEAD, frontToe.ahead());
    values.put(CalibrationKey.OFFSET_FRONT_HEEL_ALONG, frontHeel.along());
    values.put(CalibrationKey.OFFSET_FRONT_HEEL_AHEAD, frontHeel.ahead());
    values.put(CalibrationKey.OFFSET_REAR_KNEE_ALONG, rearKnee.along());
    values.put(CalibrationKey.OFFSET_REAR_KNEE_AHEAD, rearKnee.ahead());
    return values;
  }
}
