package shinline.cli.accuracy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.stat.StatUtils;
import shinline.cli.accuracy.ClipScore.Deviation;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.interval.IntervalModel;

/**
 * Fits how much of the body's part of a ± differs from rep to rep of one clip: the pooled standard
 * deviation of errors about the mean of their clip over the body's part; the largest of the
 * measures, so that none is told narrower than it is.
 */
final class RepShareFitting {
  private RepShareFitting() {}

  /** Nothing from clips of one rep each. */
  static Map<CalibrationKey, Double> over(List<KnownClip> clips, Calibration fitted) {
    Map<Scored, double[]> pooled = new EnumMap<>(Scored.class);
    for (KnownClip clip : clips) {
      Map<Scored, List<Double>> errors = new EnumMap<>(Scored.class);
      for (Deviation deviation : clip.measured(fitted).deviations()) {
        if (deviation.scored().measure().isPresent()) {
          errors.computeIfAbsent(deviation.scored(), s -> new ArrayList<>()).add(deviation.error());
        }
      }
      errors.forEach(
          (scored, of) -> {
            double[] sums = pooled.computeIfAbsent(scored, s -> new double[2]);
            sums[0] +=
                StatUtils.variance(of.stream().mapToDouble(e -> e).toArray()) * (of.size() - 1);
            sums[1] += of.size() - 1;
          });
    }
    double largest = 0;
    for (Map.Entry<Scored, double[]> one : pooled.entrySet()) {
      double body =
          one.getKey().measure().map(m -> fitted.value(IntervalModel.body(m))).orElse(0.0);
      double[] sums = one.getValue();
      if (sums[1] > 0 && body > 0) {
        largest = Math.max(largest, Math.sqrt(sums[0] / sums[1]) / body);
      }
    }
    return largest > 0
        ? Map.of(CalibrationKey.INTERVAL_REP_SHARE, Math.min(1, Math.ceil(100 * largest) / 100))
        : Map.of();
  }
}
