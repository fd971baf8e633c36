package shinline.metrics.signal;

import java.util.Arrays;

/**
 * Piecewise cubic through given points that never overshoots them: where the data rise, the curve
 * rises. A plain spline would invent a dip below the lowest hip.
 *
 * <ol>
 *   <li>F. N. Fritsch, R. E. Carlson, SIAM J. Numer. Anal. 17 (1980) 238–246.
 *   <li>F. N. Fritsch, J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300–304: weighted harmonic
 *       mean slopes.
 * </ol>
 */
final class PchipInterpolator {

  private final double[] x;
  private final double[] y;
  private final double[] slope;

  /**
   * @param x strictly increasing, one or more
   */
  PchipInterpolator(double[] x, double[] y) {
    this.x = x.clone();
    this.y = y.clone();
    this.slope = slopes(x, y);
  }

  /** Value at a place between the first and the last point; the end value beyond them. */
  double at(double place) {
    int last = x.length - 1;
    if (last == 0 || place <= x[0]) {
      return y[0];
    }
    if (place >= x[last]) {
      return y[last];
    }
    int found = Arrays.binarySearch(x, place);
    if (found >= 0) {
      return y[found];
    }
    int k = -found - 2;
    double h = x[k + 1] - x[k];
    double s = (place - x[k]) / h;
    double s2 = s * s;
    double s3 = s2 * s;
    return (2 * s3 - 3 * s2 + 1) * y[k]
        + (s3 - 2 * s2 + s) * h * slope[k]
        + (3 * s2 - 2 * s3) * y[k + 1]
        + (s3 - s2) * h * slope[k + 1];
  }

  private static double[] slopes(double[] x, double[] y) {
    int n = x.length;
    double[] out = new double[n];
    if (n < 2) {
      return out;
    }
    double[] h = new double[n - 1];
    double[] d = new double[n - 1];
    for (int k = 0; k < n - 1; k++) {
      h[k] = x[k + 1] - x[k];
      d[k] = (y[k + 1] - y[k]) / h[k];
    }
    if (n == 2) {
      Arrays.fill(out, d[0]);
      return out;
    }
    for (int k = 1; k < n - 1; k++) {
      if (d[k - 1] * d[k] > 0) {
        double w1 = 2 * h[k] + h[k - 1];
        double w2 = h[k] + 2 * h[k - 1];
        out[k] = (w1 + w2) / (w1 / d[k - 1] + w2 / d[k]);
      }
    }
    out[0] = endSlope(h[0], h[1], d[0], d[1]);
    out[n - 1] = endSlope(h[n - 2], h[n - 3], d[n - 2], d[n - 3]);
    return out;
  }

  /** Three-point slope at an end, held back where it would break the shape. */
  private static double endSlope(double h0, double h1, double d0, double d1) {
    double slope = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
    if (slope * d0 <= 0) {
      return 0;
    }
    return d0 * d1 <= 0 && Math.abs(slope) > Math.abs(3 * d0) ? 3 * d0 : slope;
  }
}
