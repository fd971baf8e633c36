package shinline.metrics.correction;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
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
 * @param offsets one for each part
 */
public record CorrectionTable(Map<Part, Offset> offsets) {

  /** A part of the table, and where a calibration tells it. */
  public enum Part {
    /** Mid-hip, in the frame of the trunk. */
    HIP(CalibrationKey.OFFSET_MID_HIP_ALONG, CalibrationKey.OFFSET_MID_HIP_AHEAD),
    /** Added to that for each radian of hip flexion. */
    HIP_BEND(CalibrationKey.OFFSET_MID_HIP_BEND_ALONG, CalibrationKey.OFFSET_MID_HIP_BEND_AHEAD),
    /** Mid-shoulder, in the frame of the trunk. */
    SHOULDER(CalibrationKey.OFFSET_MID_SHOULDER_ALONG, CalibrationKey.OFFSET_MID_SHOULDER_AHEAD),
    /** In the frame of the trunk. */
    FRONT_HIP(CalibrationKey.OFFSET_FRONT_HIP_ALONG, CalibrationKey.OFFSET_FRONT_HIP_AHEAD),
    /** Added to that for each radian of hip flexion. */
    FRONT_HIP_BEND(
        CalibrationKey.OFFSET_FRONT_HIP_BEND_ALONG, CalibrationKey.OFFSET_FRONT_HIP_BEND_AHEAD),
    /** In the frame of the shank. */
    FRONT_KNEE(CalibrationKey.OFFSET_FRONT_KNEE_ALONG, CalibrationKey.OFFSET_FRONT_KNEE_AHEAD),
    /** In the frame of the shank. */
    FRONT_ANKLE(CalibrationKey.OFFSET_FRONT_ANKLE_ALONG, CalibrationKey.OFFSET_FRONT_ANKLE_AHEAD),
    /** In the frame of the picture. */
    FRONT_TOE(CalibrationKey.OFFSET_FRONT_TOE_ALONG, CalibrationKey.OFFSET_FRONT_TOE_AHEAD),
    /** In the frame of the picture. */
    FRONT_HEEL(CalibrationKey.OFFSET_FRONT_HEEL_ALONG, CalibrationKey.OFFSET_FRONT_HEEL_AHEAD),
    /** In the frame of the picture. */
    REAR_KNEE(CalibrationKey.OFFSET_REAR_KNEE_ALONG, CalibrationKey.OFFSET_REAR_KNEE_AHEAD);

    private final CalibrationKey along;
    private final CalibrationKey ahead;

    Part(CalibrationKey along, CalibrationKey ahead) {
      this.along = along;
      this.ahead = ahead;
    }
  }

  /** An offset, share of trunk, thigh and shank together. */
  public record Offset(double along, double ahead) {}

  public CorrectionTable {
    offsets = Map.copyOf(offsets);
    if (offsets.size() != Part.values().length) {
      throw new IllegalArgumentException("offsets of " + offsets.keySet() + " only");
    }
  }

  /** The offsets of a calibration. */
  public static CorrectionTable of(Calibration calibration) {
    Map<Part, Offset> offsets = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      offsets.put(part, new Offset(calibration.value(part.along), calibration.value(part.ahead)));
    }
    return new CorrectionTable(offsets);
  }

  Offset at(Part part) {
    return Objects.requireNonNull(offsets.get(part));
  }

  /** The same numbers by the names they have in a calibration. */
  public Map<CalibrationKey, Double> values() {
    Map<CalibrationKey, Double> values = new EnumMap<>(CalibrationKey.class);
    offsets.forEach(
        (part, offset) -> {
          values.put(part.along, offset.along());
          values.put(part.ahead, offset.ahead());
        });
    return values;
  }
}
