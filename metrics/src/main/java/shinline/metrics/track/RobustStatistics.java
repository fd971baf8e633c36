package shinline.metrics.track;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** Middle values that outliers do not move. */
public final class RobustStatistics {
  private RobustStatistics() {}

  public static OptionalDouble median(List<Double> values) {
    return median(values.stream().mapToDouble(Double::doubleValue).toArray());
  }

  public static OptionalDouble median(double[] values) {
    if (values.length == 0) {
      return OptionalDouble.empty();
    }
    double[] v = values.clone();
    Arrays.sort(v);
    int n = v.length;
    return OptionalDouble.of(n % 2 == 1 ? v[n / 2] : (v[n / 2 - 1] + v[n / 2]) / 2);
  }

  /**
   * Half-sample mode: where the values lie densest, whatever the rest does. Robertson and Cryer
   * 1974, J Am Stat Assoc 69:1012–1016 (definition from memory).
   */
  public static OptionalDouble mode(List<Double> values) {
    if (values.isEmpty()) {
      return OptionalDouble.empty();
    }
    double[] v = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    int from = 0;
    int size = v.length;
    while (size > 3) {
      int half = (size + 1) / 2;
      int best = from;
      for (int i = from; i + half <= from + size; i++) {
        if (v[i + half - 1] - v[i] < v[best + half - 1] - v[best]) {
          best = i;
        }
      }
      from = best;
      size = half;
    }
    return median(Arrays.copyOfRange(v, from, from + size));
  }

  /** Value below which the share {@code p} (0…1) of the values lies, nearest rank. */
  public static OptionalDouble quantile(List<Double> values, double p) {
    if (values.isEmpty()) {
      return OptionalDouble.empty();
    }
    double[] v = values.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return OptionalDouble.of(v[(int) Math.min(v.length - 1, Math.floor(p * v.length))]);
  }
}
