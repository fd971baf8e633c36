package shinline.cli.accuracy;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;

/**
 * What clips with truth say about a calibration: offsets first, then the parts of the ± that those
 * leave, then the limits of the flags. What they do not tell stays as it was.
 *
 * @param base what is not fitted
 * @param limits the kinds whose limit could be fitted
 * @param refused fitted values that no sensible calibration has, as where a clip was measured all
 *     wrong; what they would replace stays
 */
record CalibrationFit(
    Calibration base,
    Map<CalibrationKey, Double> offsets,
    Map<CalibrationKey, Double> intervals,
    List<LimitFitting> limits,
    Map<CalibrationKey, Double> refused) {

  static CalibrationFit over(List<KnownClip> clips, Calibration base) {
    Map<CalibrationKey, Double> refused = new EnumMap<>(CalibrationKey.class);
    Map<CalibrationKey, Double> offsets = sensible(OffsetFitting.over(clips, base), refused);
    Map<CalibrationKey, Double> intervals =
        sensible(new IntervalFitting(base).over(clips), refused);
    intervals.putAll(
        sensible(RepShareFitting.over(clips, base.trying(offsets).trying(intervals)), refused));
    return new CalibrationFit(
        base, offsets, intervals, LimitFitting.over(clips, base.trying(offsets)), refused);
  }

  /**
   * Values within the ranges of their keys.
   *
   * @param refused takes the others
   */
  static Map<CalibrationKey, Double> sensible(
      Map<CalibrationKey, Double> fitted, Map<CalibrationKey, Double> refused) {
    Map<CalibrationKey, Double> kept = new EnumMap<>(CalibrationKey.class);
    fitted.forEach(
        (key, value) ->
            (value >= key.least() && value <= key.most() ? kept : refused).put(key, value));
    return kept;
  }

  Map<CalibrationKey, Double> limitValues() {
    Map<CalibrationKey, Double> values = new EnumMap<>(CalibrationKey.class);
    limits.forEach(l -> values.put(l.key(), l.limit()));
    return values;
  }

  /** To measure with; the values keep the provenance of those they replace. */
  Calibration tried() {
    return base.trying(offsets).trying(intervals).trying(limitValues());
  }
}
