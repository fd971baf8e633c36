package shinline.metrics.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoints;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SavitzkyGolayTest {

  /** The tables are exact fractions, so only rounding is left. */
  private static final double ROUNDING = 1e-12;

  /** Savitzky and Golay 1964, Anal Chem 36:1627–1639, first derivative: 10 and 28 are the norms. */
  @Test
  void publishedSlopeWeights() {
    table(5, 10);
    table(7, 28);
  }

  /** The slope in the middle of an impulse's window is the impulse's weight. */
  private static void table(int points, double norm) {
    int half = points / 2;
    for (int k = -half; k <= half; k++) {
      double[] impulse = new double[points];
      impulse[half + k] = 1;
      assertThat(new SavitzkyGolay(points).slope(impulse, 1)[half])
          .isCloseTo(k / norm, within(ROUNDING));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 5, 7, 9, 11})
  void slopesOfQuadraticsAreExactToTheEnds(int points) {
    double[] x = new double[40];
    for (int i = 0; i < x.length; i++) {
      double t = i / 30.0;
      x[i] = 3 - 2 * t + 5 * t * t;
    }
    double[] slope = new SavitzkyGolay(points).slope(x, 1 / 30.0);
    for (int i = 0; i < x.length; i++) {
      assertThat(slope[i]).isCloseTo(-2 + 10 * (i / 30.0), within(1e-8));
    }
  }

  /** Reference: the polynomial fit of Apache Commons Math 3.6.1, an iterative one. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void slopesOfTheReferenceLibrarysFits(long seed) {
    double[] x = new Random(seed).doubles(20, -10, 10).toArray();
    double[] slope = new SavitzkyGolay(7).slope(x, 0.5);
    for (int i = 0; i < x.length; i++) {
      WeightedObservedPoints window = new WeightedObservedPoints();
      int from = Math.max(0, Math.min(i - 3, x.length - 7));
      for (int k = from; k < from + 7; k++) {
        window.add(0.5 * (k - i), x[k]);
      }
      double[] fit = PolynomialCurveFitter.create(2).fit(window.toList());
      assertThat(slope[i]).isCloseTo(fit[1], within(1e-9));
    }
  }

  @Test
  void shortSignalsGetOneFit() {
    var filter = new SavitzkyGolay(7);
    assertThat(filter.slope(new double[] {}, 1)).isEmpty();
    assertThat(filter.slope(new double[] {4}, 1)).containsExactly(0);
    assertThat(filter.slope(new double[] {4, 6}, .5))
        .containsExactly(new double[] {4, 4}, within(ROUNDING));
  }

  @Test
  void refusesWindowsWithoutAMiddle() {
    assertThatThrownBy(() -> new SavitzkyGolay(6)).hasMessageContaining("6 samples");
    assertThatThrownBy(() -> new SavitzkyGolay(1)).hasMessageContaining("1 samples");
  }
}
