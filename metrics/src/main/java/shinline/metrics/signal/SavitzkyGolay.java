package shinline.metrics.signal;

import java.util.stream.IntStream;
import shinline.metrics.statistics.PolynomialFit;

/**
 * First derivative by a local quadratic least-squares fit over an odd window. At the ends, where no
 * full window fits around a sample, the quadratic of the outermost window is read off-centre, so
 * the slope of a quadratic signal is exact everywhere.
 *
 * <ol>
 *   <li>A. Savitzky, M. J. E. Golay, Anal. Chem. 36 (1964) 1627–1639.
 * </ol>
 *
 * @param points samples in the window, odd
 */
public record SavitzkyGolay(int points) {

  private static final int DEGREE = 2;

  public SavitzkyGolay {
    if (points <= DEGREE || points % 2 == 0) {
      throw new IllegalArgumentException("a window of " + points + " samples");
    }
  }

  /**
   * As many slopes as samples, per second; a signal shorter than the window gets one common fit.
   *
   * @param stepS time between samples, seconds, above 0
   */
  public double[] slope(double[] x, double stepS) {
    if (!(stepS > 0)) {
      throw new IllegalArgumentException("time step " + stepS + " s");
    }
    int window = Math.min(points, x.length);
    double[][] weights =
        IntStream.range(0, window).mapToObj(at -> weights(window, at)).toArray(double[][]::new);
    double[] slope = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      int from = Math.max(0, Math.min(i - window / 2, x.length - window));
      for (int k = 0; k < window; k++) {
        slope[i] += weights[i - from][k] * x[from + k] / stepS;
      }
    }
    return slope;
  }

  /** Weights of the slope at one place of a window, per step: the fit's linear term about it. */
  private static double[] weights(int window, int at) {
    double[] places = IntStream.range(0, window).mapToDouble(k -> k - at).toArray();
    return window == 1
        ? new double[1]
        : new PolynomialFit(places, Math.min(DEGREE, window - 1)).weights(1);
  }
}
