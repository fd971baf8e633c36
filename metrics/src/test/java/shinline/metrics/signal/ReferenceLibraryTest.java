package shinline.metrics.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoint;
import org.apache.commons.math3.stat.descriptive.rank.Median;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.metrics.track.RobustStatistics;

/** Our own arithmetic against Apache Commons Math 3.6.1, which shares nothing with it. */
class ReferenceLibraryTest {
  /** Both work in doubles on values of some hundred. */
  private static final double ROUNDING = 1e-7;

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 9, 10, 101, 102})
  void medians(int count) {
    double[] values = new Random(count).doubles(count, -300, 300).toArray();
    assertThat(RobustStatistics.median(values).orElseThrow())
        .isCloseTo(new Median().evaluate(values), within(ROUNDING));
  }

  /** A parabola through each window by least squares: its value and slope in the middle. */
  @ParameterizedTest
  @EnumSource(SavitzkyGolay.Window.class)
  void savitzkyGolayIsALocalParabola(SavitzkyGolay.Window window) {
    double step = 1.0 / 30;
    double[] x = new Random(7).doubles(40, -200, 200).toArray();
    double[] smooth = new SavitzkyGolay(window).smooth(x);
    double[] slope = new SavitzkyGolay(window).slope(x, step);
    int half = window.points() / 2;
    for (int i = half; i < x.length - half; i++) {
      List<WeightedObservedPoint> points = new ArrayList<>();
      for (int k = -half; k <= half; k++) {
        points.add(new WeightedObservedPoint(1, k * step, x[i + k]));
      }
      double[] parabola = PolynomialCurveFitter.create(2).fit(points);
      assertThat(smooth[i]).isCloseTo(parabola[0], within(ROUNDING));
      assertThat(slope[i]).isCloseTo(parabola[1], within(ROUNDING / step));
    }
  }
}
