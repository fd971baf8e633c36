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
 */
record CalibrationFit(
    Calibration base,
    Map<CalibrationKey, Double> offsets,
    Map<CalibrationKey, Double> intervals,
    List<LimitFitting> limits) {

  static CalibrationFit over(List<KnownClip> clips, Calibration base) {
    Map<CalibrationKey, Double> offsets = OffsetFitting.over(clips, base);
    return new CalibrationFit(
        base,
        offsets,
        new IntervalFitting(base).over(clips),
        LimitFitting.over(clips, base.trying(offsets)));
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
