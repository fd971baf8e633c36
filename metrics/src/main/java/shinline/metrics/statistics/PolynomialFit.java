package shinline.metrics.statistics;

import java.util.Arrays;
import java.util.stream.DoubleStream;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.DecompositionSolver;
import org.hipparchus.linear.QRDecomposition;

/** The polynomial nearest to given points by least squares, through a QR decomposition. */
public final class PolynomialFit {
  private final DecompositionSolver solver;
  private final double[] rootWeights;

  /**
   * @param x places of the points, more of them different than the degree
   * @param degree 0 or more
   */
  public PolynomialFit(double[] x, int degree) {
    this(x, DoubleStream.generate(() -> 1).limit(x.length).toArray(), degree);
  }

  /**
   * @param x places of the points, more of them different than the degree
   * @param weights what the square of each point's distance counts for
   * @param degree 0 or more
   */
  public PolynomialFit(double[] x, double[] weights, int degree) {
    rootWeights = Arrays.stream(weights).map(Math::sqrt).toArray();
    double[][] powers = new double[x.length][degree + 1];
    for (int i = 0; i < x.length; i++) {
      powers[i][0] = rootWeights[i];
      for (int k = 1; k <= degree; k++) {
        powers[i][k] = powers[i][k - 1] * x[i];
      }
    }
    solver = new QRDecomposition(new Array2DRowRealMatrix(powers, false)).getSolver();
  }

  /** Coefficients of 1, x, x² and so on of the polynomial through values at the places. */
  public double[] through(double[] y) {
    return solver
        .solve(new ArrayRealVector(y, false).ebeMultiply(new ArrayRealVector(rootWeights, false)))
        .toArray();
  }

  /** What each value counts for in one coefficient, which is the sum of their products. */
  public double[] weights(int coefficient) {
    return solver
        .getInverse()
        .getRowVector(coefficient)
        .ebeMultiply(new ArrayRealVector(rootWeights, false))
        .toArray();
  }
}
