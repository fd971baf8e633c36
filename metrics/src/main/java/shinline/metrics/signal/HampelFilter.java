package shinline.metrics.signal;

import java.util.Arrays;

/**
 * Replaces single wild samples by the median of their neighbourhood: a sample further from the
 * median than a number of robust standard deviations (1.4826 times the median absolute deviation)
 * is taken as a slip of the keypoint, not a movement.
 *
 * <p>Where more than half of the neighbours are equal the deviation is 0 and would condemn every
 * other sample; such a sample is judged by {@code floor} alone, and left as it is when the floor is
 * 0.
 *
 * @param halfWindow neighbours on either side; default 3
 * @param deviations robust standard deviations allowed; default 3
 * @param floor least distance from the median, in the unit of the series, that can count as wild;
 *     default 0, none
 */
public record HampelFilter(int halfWindow, double deviations, double floor) {

  /** Makes the median absolute deviation of normal noise equal its standard deviation. */
  private static final double MAD_TO_SIGMA = 1.4826;

  public static final HampelFilter DEFAULT = new HampelFilter(3, 3, 0);

  public HampelFilter {
    if (halfWindow < 1 || !(deviations > 0) || !(floor >= 0)) {
      throw new IllegalArgumentException(
          "half window " + halfWindow + ", deviations " + deviations + ", floor " + floor);
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
    int from = Math.max(0, i - halfWindow);
    int to = Math.min(series.size() - 1, i + halfWindow);
    double[] near = new double[to - from + 1];
    int count = 0;
    for (int k = from; k <= to; k++) {
      if (series.seen(k)) {
        near[count++] = series.value(k);
      }
    }
    near = Arrays.copyOf(near, count);
    double median = median(near);
    double[] away = new double[count];
    for (int k = 0; k < count; k++) {
      away[k] = Math.abs(near[k] - median);
    }
    double limit = Math.max(floor, deviations * MAD_TO_SIGMA * median(away));
    double x = series.value(i);
    return limit > 0 && Math.abs(x - median) > limit ? median : x;
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int n = sorted.length;
    return n % 2 == 1 ? sorted[n / 2] : (sorted[n / 2 - 1] + sorted[n / 2]) / 2;
  }
}
