package shinline.metrics.signal;

import java.util.Arrays;
import shinline.metrics.statistics.RobustStatistics;

/**
 * Replaces single wild samples by the median of their neighbourhood: a sample further from the
 * median than a number of robust standard deviations (1.4826 times the median absolute deviation)
 * is taken as a slip of the keypoint, not a movement.
 *
 * <p>Where more than half of the neighbours are equal the deviation is 0 and would condemn every
 * other sample; such a sample is judged by {@code floor} alone, and left as it is when the floor is
 * 0.
 *
 * @param floor least distance from the median, in the unit of the series, that can count as wild; 0
 *     for none
 */
public record HampelFilter(double floor) {
  /** Neighbours on either side. */
  private static final int HALF_WINDOW = 3;

  /** Robust standard deviations allowed. */
  private static final double DEVIATIONS = 3;

  /** Makes the median absolute deviation of normal noise equal its standard deviation. */
  private static final double MAD_TO_SIGMA = 1.4826;

  public HampelFilter {
    if (!(floor >= 0)) {
      throw new IllegalArgumentException("floor " + floor);
    }
  }

  /** The series with wild samples replaced; missing samples stay missing and count for nothing. */
  public Series clean(Series series) {
    int n = series.size();
    double[] value = new double[n];
    boolean[] seen = new boolean[n];
    for (int i = 0; i < n; i++) {
      seen[i] = series.seen(i);
      if (seen[i]) {
        value[i] = judged(series, i);
      }
    }
    return Series.of(series.times(), value, seen);
  }

  private double judged(Series series, int i) {
    int from = Math.max(0, i - HALF_WINDOW);
    int to = Math.min(series.size() - 1, i + HALF_WINDOW);
    double[] near = new double[to - from + 1];
    int count = 0;
    for (int k = from; k <= to; k++) {
      if (series.seen(k)) {
        near[count++] = series.value(k);
      }
    }
    near = Arrays.copyOf(near, count);
    double median = RobustStatistics.median(near).orElseThrow();
    double[] away = new double[count];
    for (int k = 0; k < count; k++) {
      away[k] = Math.abs(near[k] - median);
    }
    double limit =
        Math.max(floor, DEVIATIONS * MAD_TO_SIGMA * RobustStatistics.median(away).orElseThrow());
    double x = series.value(i);
    return limit > 0 && Math.abs(x - median) > limit ? median : x;
  }
}
