package shinline.metrics.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SeriesCleaningTest {

  private static Series even(double... values) {
    return Series.of(times(values.length), values);
  }

  private static double[] times(int n) {
    double[] t = new double[n];
    for (int i = 0; i < n; i++) {
      t[i] = i / 30.0;
    }
    return t;
  }

  private static Series without(Series s, int from, int to) {
    double[] value = new double[s.size()];
    boolean[] seen = new boolean[s.size()];
    for (int i = 0; i < value.length; i++) {
      seen[i] = i < from || i >= to;
      value[i] = seen[i] ? s.value(i) : Double.NaN;
    }
    return Series.of(s.times(), value, seen);
  }

  @Test
  void missingSamplesAreNeverHandedOut() {
    Series s = without(even(1, 2, 3, 4), 1, 2);
    assertThat(s.seenCount()).isEqualTo(3);
    assertThat(s.seen(1)).isFalse();
    assertThat(s.runs()).containsExactly(new Series.Run(0, 1), new Series.Run(2, 4));
    assertThatThrownBy(() -> s.value(1)).isInstanceOf(IllegalStateException.class);
    assertThat(s.map(v -> 2 * v).seen(1)).isFalse();
  }

  @Test
  void refusesBadSeries() {
    assertThatThrownBy(() -> Series.of(new double[] {0, 0}, new double[] {1, 2}))
        .hasMessageContaining("does not increase");
    assertThatThrownBy(() -> even(Double.NaN)).hasMessageContaining("NaN");
  }

  /** Hampel's identifier on a ramp with one slip, by hand: median 6, MAD 2, limit 8.896. */
  @Test
  void hampelReplacesTheSlip() {
    Series cleaned = new HampelFilter(0).clean(even(1, 2, 3, 4, 50, 6, 7, 8, 9));
    assertThat(cleaned).isEqualTo(even(1, 2, 3, 4, 6, 6, 7, 8, 9));
    assertThat(new HampelFilter(0).clean(even(1, 2, 3, 4, 14.8, 6, 7, 8, 9)).value(4))
        .isEqualTo(14.8);
    assertThat(new HampelFilter(0).clean(even(1, 2, 3, 4, 14.9, 6, 7, 8, 9)).value(4)).isEqualTo(6);
  }

  @Test
  void hampelWithoutSpread() {
    Series s = even(5, 5, 5, 5, 9, 5, 5, 5, 5);
    assertThat(new HampelFilter(0).clean(s)).isEqualTo(s);
    assertThat(new HampelFilter(1).clean(s).value(4)).isEqualTo(5);
  }

  @Test
  void shortGapsAreFilledLongOnesStay() {
    double[] x = new double[60];
    for (int i = 0; i < x.length; i++) {
      x[i] = 90 - 20 * (1 - Math.cos(2 * Math.PI * i / 59.0));
    }
    Series s = even(x);
    // Nine samples missing: ten steps of 1/30 s, 0.333 s between the neighbours.
    Series filled = GapFill.fill(without(s, 10, 19));
    assertThat(filled.seenCount()).isEqualTo(filled.size());
    for (int i = 10; i < 19; i++) {
      // A cubic over 0.17 s of a two-second wave: error below a thirtieth of a centimetre per
      // sample.
      assertThat(filled.value(i)).isCloseTo(x[i], within(0.15));
    }
    assertThat(GapFill.fill(without(s, 10, 20))).isEqualTo(without(s, 10, 20));
    assertThat(GapFill.fill(without(s, 0, 2))).isEqualTo(without(s, 0, 2));
    assertThat(GapFill.fill(without(s, 58, 60)).seen(59)).isFalse();
  }

  @Test
  void fillNeverOvershoots() {
    Series filled = GapFill.fill(without(even(0, 0, 0, 9, 9, 5, 5, 5), 3, 5));
    for (int i = 0; i < filled.size(); i++) {
      assertThat(filled.value(i)).isBetween(0.0, 5.0);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12, 13})
  void variableFrameRateGoesToTheGridAndBack(long seed) {
    Random random = new Random(seed);
    double[] t = new double[150];
    double[] x = new double[150];
    for (int i = 0; i < t.length; i++) {
      t[i] = i == 0 ? 2 : t[i - 1] + 1 / 30.0 + (random.nextDouble() - .5) / 60;
      x[i] = 70 + 20 * Math.cos(2 * Math.PI * t[i] / 3);
    }
    Series s = Series.of(t, x);
    UniformTimeGrid grid = UniformTimeGrid.covering(s, 30);
    Series even = grid.resample(s);
    assertThat(even.seenCount()).isEqualTo(even.size());
    for (int i = 0; i < grid.size(); i++) {
      // The cubic flattens turning points a little: h²/8 times the curvature, about 0.02 cm.
      double truth = 70 + 20 * Math.cos(2 * Math.PI * grid.timeS(i) / 3);
      assertThat(even.value(i)).isCloseTo(truth, within(0.03));
    }
    Series back = grid.back(even, t);
    for (int i = 0; i < t.length; i++) {
      assertThat(back.value(i)).isCloseTo(x[i], within(0.06));
    }
  }

  @Test
  void gridDoesNotReadAcrossAGap() {
    Series s = without(even(1, 2, 3, 4, 5, 6), 2, 4);
    Series on = UniformTimeGrid.covering(s).resample(s);
    assertThat(on).hasToString("Series of 6 samples, 4 seen");
    assertThat(on.value(4)).isEqualTo(5);
  }

  /** R(fc) by Winter's formula: white noise on a slow wave; the line's intercept is the noise. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void residualAnalysisFindsTheNoise(long seed) {
    Random random = new Random(seed);
    double[] x = new double[600];
    for (int i = 0; i < x.length; i++) {
      x[i] = 20 * Math.cos(2 * Math.PI * i / 60 / 3) + 0.5 * random.nextGaussian();
    }
    var choice = ResidualAnalysis.choose(x, 60);
    assertThat(choice.cutoffHz()).isBetween(4.0, 6.0);
    // 600 samples: 3 % on the noise; the line over the last third adds its own part.
    assertThat(choice.noiseRms()).isCloseTo(0.5, within(0.1));
    double last = Double.POSITIVE_INFINITY;
    for (var r : ResidualAnalysis.curve(x, 60)) {
      assertThat(r.rms()).isLessThan(last);
      last = r.rms();
    }
  }

  @Test
  void residualOfAWaveIsWhatTheGainTakesAway() {
    double[] x = new double[1200];
    for (int i = 0; i < x.length; i++) {
      x[i] = Math.sin(2 * Math.PI * 6 * i / 60);
    }
    // (1 − 0.70711) of a sine with root mean square 0.70711; the ends add a little.
    assertThat(ResidualAnalysis.residual(x, 6, 60)).isCloseTo(0.2071, within(0.002));
  }
}
