package shinline.metrics.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;

/** Values of a sample by their order, which outliers do not move; empty for an empty sample. */
public final class RobustStatistics {
  /** Share of a normal sample that lies within one standard deviation of its middle. */
  private static final double ONE_SIGMA = 0.683;

  private RobustStatistics() {}

  public static OptionalDouble median(List<Double> values) {
    return median(array(values));
  }

  /** The middle value; half way between the middle two of an even number. */
  public static OptionalDouble median(double[] values) {
    return quantile(values, 0.5);
  }

  public static OptionalDouble quantile(List<Double> values, double p) {
    return quantile(array(values), p);
  }

  /**
   * Least value that the share {@code p} (above 0, up to 1) of the values does not exceed; half way
   * to the next one where exactly that share does not. Number 2 of Hyndman and Fan 1996, Am Stat
   * 50:361–365: always a value that occurs or the middle of two, and the median for one half.
   */
  public static OptionalDouble quantile(double[] values, double p) {
    return values.length == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(
            new Percentile(100 * p).withEstimationType(EstimationType.R_2).evaluate(values));
  }

  /**
   * Standard deviation about the median, of which single odd values make nothing: 68.3 of 100
   * values of a normal sample lie within it.
   */
  public static OptionalDouble spread(double[] values) {
    OptionalDouble middle = median(values);
    return middle.isEmpty()
        ? middle
        : quantile(
            Arrays.stream(values).map(v -> Math.abs(v - middle.getAsDouble())).toArray(),
            ONE_SIGMA);
  }

  /**
   * Half-sample mode: where the values lie densest, whatever the rest does. Robertson and Cryer
   * 1974, J Am Stat Assoc 69:1012–1016 (definition from memory).
   */
  public static OptionalDouble mode(List<Double> values) {
    double[] v = array(values);
    Arrays.sort(v);
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

  private static double[] array(List<Double> values) {
    return values.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
