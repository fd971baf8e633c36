package shinline.metrics.bar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import shinline.metrics.signal.Series;
import shinline.metrics.signal.UniformTimeGrid;
import shinline.metrics.synthetic.ShippedCalibration;

class SteadiedHipTest {
  private static final double PX_PER_M = 220;
  private static final double STATURE_PX = 1.75 * PX_PER_M;
  private static final UniformTimeGrid GRID = new UniformTimeGrid(0, 1.0 / 30, 361);

  /** Down and up by 0.3 m every three seconds. */
  private static double rise(double t) {
    return -0.15 * (1 - Math.cos(2 * Math.PI * t / 3));
  }

  private static Series over(DoubleUnaryOperator value, java.util.function.DoublePredicate seen) {
    double[] t = GRID.times();
    double[] v = new double[t.length];
    boolean[] s = new boolean[t.length];
    for (int i = 0; i < t.length; i++) {
      s[i] = seen.test(t[i]);
      v[i] = s[i] ? value.applyAsDouble(t[i]) : 0;
    }
    return Series.of(t, v, s);
  }

  private static BarPath bar(Series up) {
    return new BarPath(GRID, up.map(y -> 0), up);
  }

  /** What the pose model makes of the hip: a jitter of 1.4 Hz. */
  private static double seenHip(double t) {
    return 400 + PX_PER_M * rise(t) + 3 * Math.sin(2 * Math.PI * 1.4 * t);
  }

  private static double worst(Series series, double fromS, double toS) {
    double worst = 0;
    for (int i = 0; i < series.size(); i++) {
      double t = series.timeS(i);
      if (t >= fromS && t <= toS) {
        worst = Math.max(worst, Math.abs(series.value(i) - 400 - PX_PER_M * rise(t)));
      }
    }
    return worst;
  }

  @Test
  void takesTheJitterOutAndLeavesTheLevel() {
    Series hip = over(SteadiedHipTest::seenHip, t -> true);
    Series steadied =
        SteadiedHip.of(
            hip,
            bar(over(SteadiedHipTest::rise, t -> true)),
            STATURE_PX,
            OptionalDouble.empty(),
            ShippedCalibration.HEAVY);
    assertThat(worst(hip, 1, 11)).isGreaterThan(2.9);
    assertThat(worst(steadied, 1, 11)).isLessThan(1);
  }

  @Test
  void aHipThatIsSeenTooLowInStandingIsLiftedByTheBar() {
    Series low = over(t -> 400 + 0.9 * PX_PER_M * rise(t), t -> true);
    BarPath bar = bar(over(SteadiedHipTest::rise, t -> true));
    Series steadied =
        SteadiedHip.of(
            low, bar, STATURE_PX, OptionalDouble.of(1 / PX_PER_M), ShippedCalibration.HEAVY);
    double travel = steadied.value(90) - steadied.value(135);
    assertThat(travel / (0.3 * PX_PER_M)).isBetween(0.96, 1.0);
    // A disc of 360 mm taken for one of 450 mm seems to rise by a quarter more.
    BarPath smaller = bar(over(t -> 1.25 * rise(t), t -> true));
    Series own =
        SteadiedHip.of(
            low, smaller, STATURE_PX, OptionalDouble.of(1 / PX_PER_M), ShippedCalibration.HEAVY);
    assertThat((own.value(90) - own.value(135)) / (0.3 * PX_PER_M)).isBetween(0.88, 0.92);
  }

  @Test
  void aTrunkThatSlowlyLeansMovesTheBarAndNotTheHip() {
    Series hip = over(t -> 400 + PX_PER_M * rise(t), t -> true);
    Series sinks = over(t -> rise(t) - 0.02 * (1 - Math.cos(2 * Math.PI * t / 24)), t -> true);
    assertThat(
            worst(
                SteadiedHip.of(
                    hip, bar(sinks), STATURE_PX, OptionalDouble.empty(), ShippedCalibration.HEAVY),
                1,
                11))
        .isLessThan(1.0);
  }

  @Test
  void whereTheBarIsNotSeenTheHipStaysAsItWas() {
    Series hip = over(SteadiedHipTest::seenHip, t -> true);
    Series part = over(SteadiedHipTest::rise, t -> t < 8);
    Series steadied =
        SteadiedHip.of(
            hip, bar(part), STATURE_PX, OptionalDouble.empty(), ShippedCalibration.HEAVY);
    for (int i = 0; i < GRID.size(); i++) {
      assertThat(steadied.seen(i)).isTrue();
      if (GRID.timeS(i) > 8.01) {
        assertThat(steadied.value(i)).isEqualTo(hip.value(i));
      }
      if (i > 0) {
        double step = steadied.value(i) - steadied.value(i - 1);
        assertThat(Math.abs(step)).as("no leap at %.2f s", GRID.timeS(i)).isLessThan(4);
      }
    }
    assertThat(worst(steadied, 1, 7)).isLessThan(0.8);
  }

  @Test
  void aDiscThatDoesSomethingElseChangesNothing() {
    Series hip = over(SteadiedHipTest::seenHip, t -> true);
    Series other = over(t -> 0.15 * Math.sin(2 * Math.PI * t / 3), t -> true);
    Series tooFar = over(t -> 3 * rise(t), t -> true);
    assertThat(
            SteadiedHip.of(
                hip, bar(other), STATURE_PX, OptionalDouble.empty(), ShippedCalibration.HEAVY))
        .isEqualTo(hip);
    assertThat(
            SteadiedHip.of(
                hip, bar(tooFar), STATURE_PX, OptionalDouble.empty(), ShippedCalibration.HEAVY))
        .isEqualTo(hip);
  }
}
