package shinline.metrics.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.stream.IntStream;
import org.apache.commons.math3.stat.regression.OLSMultipleLinearRegression;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PolynomialFitTest {

  /** The tables are exact fractions, so only rounding is left. */
  private static final double ROUNDING = 1e-12;

  /** Savitzky and Golay 1964, Anal Chem 36:1627–1639, tables for quadratic smoothing. */
  @Test
  void publishedSmoothingWeights() {
    table(35, -3, 12, 17, 12, -3);
    table(21, -2, 3, 6, 7, 6, 3, -2);
    table(231, -21, 14, 39, 54, 59, 54, 39, 14, -21);
    table(429, -36, 9, 44, 69, 84, 89, 84, 69, 44, 9, -36);
  }

  private static void table(double norm, double... weights) {
    double[] x =
        IntStream.range(0, weights.length).mapToDouble(k -> k - weights.length / 2).toArray();
    double[] found = new PolynomialFit(x, 2).weights(0);
    assertThat(found).hasSize(weights.length);
    for (int i = 0; i < weights.length; i++) {
      assertThat(found[i]).isCloseTo(weights[i] / norm, within(ROUNDING));
    }
  }

  /** Reference: Apache Commons Math 3.6.1. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void linesAndParabolasOfTheReferenceLibrary(long seed) {
    Random random = new Random(seed);
    double[] x = random.doubles(25, -1, 1).toArray();
    double[] y = random.doubles(25, -1, 1).toArray();
    SimpleRegression line = new SimpleRegression();
    double[][] powers = new double[x.length][];
    for (int i = 0; i < x.length; i++) {
      line.addData(x[i], y[i]);
      powers[i] = new double[] {x[i], x[i] * x[i]};
    }
    assertThat(new PolynomialFit(x, 1).through(y))
        .containsExactly(new double[] {line.getIntercept(), line.getSlope()}, within(ROUNDING));
    OLSMultipleLinearRegression parabola = new OLSMultipleLinearRegression();
    parabola.newSampleData(y, powers);
    assertThat(new PolynomialFit(x, 2).through(y))
        .containsExactly(parabola.estimateRegressionParameters(), within(1e-10));
  }
}
