package shinline.metrics.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.metrics.signal.SavitzkyGolay.Window;

class SavitzkyGolayTest {

  /** The tables are exact fractions, so only rounding is left. */
  private static final double ROUNDING = 1e-12;

  /** Savitzky and Golay 1964, Anal Chem 36:1627–1639, tables for quadratic smoothing. */
  @Test
  void publishedSmoothingWeights() {
    table(Window.FIVE, 35, -3, 12, 17, 12, -3);
    table(Window.SEVEN, 21, -2, 3, 6, 7, 6, 3, -2);
    table(Window.NINE, 231, -21, 14, 39, 54, 59, 54, 39, 14, -21);
    table(Window.ELEVEN, 429, -36, 9, 44, 69, 84, 89, 84, 69, 44, 9, -36);
  }

  private static void table(Window window, double norm, double... weights) {
    double[] found = new SavitzkyGolay(window).smoothingWeights();
    assertThat(found).hasSize(weights.length);
    for (int i = 0; i < weights.length; i++) {
      assertThat(found[i]).isCloseTo(weights[i] / norm, within(ROUNDING));
    }
  }

  /** Savitzky and Golay 1964, first derivative. */
  @Test
  void publishedSlopeWeights() {
    assertThat(new SavitzkyGolay(Window.FIVE).slopeWeights())
        .containsExactly(new double[] {-.2, -.1, 0, .1, .2}, within(ROUNDING));
    double[] seven = new SavitzkyGolay(Window.SEVEN).slopeWeights();
    for (int i = 0; i < 7; i++) {
      assertThat(seven[i]).isCloseTo((i - 3) / 28.0, within(ROUNDING));
    }
  }

  @ParameterizedTest
  @EnumSource(Window.class)
  void quadraticsAreReproducedToTheEnds(Window window) {
    double[] x = new double[40];
    for (int i = 0; i < x.length; i++) {
      double t = i / 30.0;
      x[i] = 3 - 2 * t + 5 * t * t;
    }
    var filter = new SavitzkyGolay(window);
    assertThat(filter.smooth(x)).containsExactly(x, within(1e-10));
    double[] slope = filter.slope(x, 1 / 30.0);
    for (int i = 0; i < x.length; i++) {
      assertThat(slope[i]).isCloseTo(-2 + 10 * (i / 30.0), within(1e-8));
    }
  }

  @Test
  void shortSignalsGetOneFit() {
    var filter = new SavitzkyGolay(Window.SEVEN);
    assertThat(filter.smooth(new double[] {})).isEmpty();
    assertThat(filter.smooth(new double[] {4})).containsExactly(4);
    assertThat(filter.slope(new double[] {4}, 1)).containsExactly(0);
    assertThat(filter.slope(new double[] {4, 6}, .5))
        .containsExactly(new double[] {4, 4}, within(ROUNDING));
  }
}
