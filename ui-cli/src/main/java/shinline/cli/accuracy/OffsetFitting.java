package shinline.cli.accuracy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.correction.OffsetFit;

/** Fits the offsets of the joint centres to the clips that tell them. */
final class OffsetFitting {
  /** A hundred-thousandth of trunk, thigh and shank is a hundredth of a millimetre. */
  private static final int PLACES = 5;

  private OffsetFitting() {}

  /** Nothing when no clip tells its joint centres. */
  static Map<CalibrationKey, Double> over(List<KnownClip> clips, Calibration kept) {
    List<KnownClip.Joints> joints = clips.stream().flatMap(c -> c.joints().stream()).toList();
    if (joints.isEmpty()) {
      return Map.of();
    }
    OffsetFit fit = new OffsetFit(kept);
    joints.forEach(j -> fit.add(j.landmarks(), j.centres()));
    Map<CalibrationKey, Double> fitted = new EnumMap<>(CalibrationKey.class);
    fit.table()
        .values()
        .forEach(
            (key, value) ->
                fitted.put(
                    key,
                    BigDecimal.valueOf(value)
                        .setScale(PLACES, RoundingMode.HALF_EVEN)
                        .doubleValue()));
    fitted.remove(CalibrationKey.OFFSET_FRONT_TOE_AHEAD);
    return fitted;
  }
}
