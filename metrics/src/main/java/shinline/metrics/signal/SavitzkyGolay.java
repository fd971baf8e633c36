package shinline.metrics.signal;

/**
 * Local quadratic least-squares fit: smoothing and first derivative over an odd window. The weights
 * are computed from the least-squares problem, not taken from tables; the tables are test values.
 * At the ends, where no full window fits around a sample, the quadratic of the outermost window is
 * read off-centre, so a quadratic signal is reproduced exactly everywhere.
 *
 * <ol>
 *   <li>A. Savitzky, M. J. E. Golay, Anal. Chem. 36 (1964) 1627–1639.
 * </ol>
 */
public final class SavitzkyGolay {

  private static final int DEGREE = 2;

  /** Number of samples in the window. */
  public enum Window {
    FIVE(5),
    SEVEN(7),
    NINE(9),
    ELEVEN(11);

    private final int points;

    Window(int points) {
      this.points = points;
    }

    public int points() {
      return points;
    }
  }

  private enum Order {
    VALUE,
    SLOPE
  }

  private final Window window;

  public SavitzkyGolay(Window window) {
    this.window = window;
  }

  /** Weights of the smoothed value at the middle of the window; they add up to 1. */
  public double[] smoothingWeights() {
    return weights(window.points, window.points / 2, Order.VALUE);
  }

  /** Weights of the slope at the middle of the window, per sample step. */
  public double[] slopeWeights() {
    return weights(window.points, window.points / 2, Order.SLOPE);
  }

  /** Smoothed samples, as many as given. Signals shorter than the window get one common fit. */
  public double[] smooth(double[] x) {
    return apply(x, Order.VALUE);
  }

  /** Every run of an even series smoothed by itself. */
  public Series smooth(Series even) {
    return even.mapRuns(this::smooth);
  }

  /**
   * First derivative, per second.
   *
   * @param stepS time between samples, seconds, above 0
   */
  public double[] slope(double[] x, double stepS) {
    if (!(stepS > 0)) {
      throw new IllegalArgumentException("time step " + stepS + " s");
    }
    double[] slope = apply(x, Order.SLOPE);
    for (int i = 0; i < slope.length; i++) {
      slope[i] /= stepS;
    }
    return slope;
  }

  /** First derivative of every run of an even series, per second. */
  public Series slope(Series even, double stepS) {
    return even.mapRuns(x -> slope(x, stepS));
  }

  private double[] apply(double[] x, Order order) {
    int n = x.length;
    int m = Math.min(window.points, n);
    double[] out = new double[n];
    double[][] at = new double[m][];
    for (int i = 0; i < n; i++) {
      int from = Math.max(0, Math.min(i - m / 2, n - m));
      int offset = i - from;
      double[] w = at[offset];
      if (w == null) {
        w = weights(m, offset, order);
        at[offset] = w;
      }
      double sum = 0;
      for (int k = 0; k < m; k++) {
        sum += w[k] * x[from + k];
      }
      out[i] = sum;
    }
    return out;
  }

  /**
   * Weights that give value or slope of the fitted polynomial at one position of the window.
   * Discrete orthogonal polynomials over the window, by Gram–Schmidt: no ill-conditioned normal
   * equations.
   */
  private static double[] weights(int points, int position, Order order) {
    double middle = (points - 1) / 2.0;
    double[] weights = new double[points];
    // Polynomials as coefficients of 1, u, u² with u measured from the middle of the window.
    double[][] basis = new double[Math.min(DEGREE, points - 1) + 1][DEGREE + 1];
    for (int d = 0; d < basis.length; d++) {
      basis[d][d] = 1;
      for (int lower = 0; lower < d; lower++) {
        double share =
            dot(basis[d], basis[lower], points) / dot(basis[lower], basis[lower], points);
        for (int k = 0; k <= DEGREE; k++) {
          basis[d][k] -= share * basis[lower][k];
        }
      }
    }
    double u = position - middle;
    for (double[] p : basis) {
      double read = order == Order.VALUE ? value(p, u) : p[1] + 2 * p[2] * u;
      double norm = dot(p, p, points);
      for (int k = 0; k < points; k++) {
        weights[k] += read * value(p, k - middle) / norm;
      }
    }
    return weights;
  }

  private static double value(double[] p, double u) {
    return p[0] + u * (p[1] + u * p[2]);
  }

  private static double dot(double[] p, double[] q, int points) {
    double sum = 0;
    for (int k = 0; k < points; k++) {
      double u = k - (points - 1) / 2.0;
      sum += value(p, u) * value(q, u);
    }
    return sum;
  }
}
