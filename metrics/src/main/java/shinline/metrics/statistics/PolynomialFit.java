package shinline.metrics.statistics;

import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;

/** The polynomial nearest to given points by least squares, through a QR decomposition. */
public final class PolynomialFit {
  private final DecompositionSolver solver;

  /**
   * @param x places of the points, more of them different than the degree
   * @param degree 0 or more
   */
  public PolynomialFit(double[] x, int degree) {
    double[][] powers = new double[x.length][degree + 1];
    for (int i = 0; i < x.length; i++) {
      powers[i][0] = 1;
      for (int k = 1; k <= degree; k++) {
        powers[i][k] = powers[i][k - 1] * x[i];
      }
    }
    solver = new QRDecomposition(new Array2DRowRealMatrix(powers, false)).getSolver();
  }

  /** Coefficients of 1, x, x² and so on of the polynomial through values at the places. */
  public double[] through(double[] y) {
    return solver.solve(new ArrayRealVector(y, false)).toArray();
  }

  /** What each value counts for in one coefficient, which is the sum of their products. */
  public double[] weights(int coefficient) {
    return solver.getInverse().getRow(coefficient);
  }
}
