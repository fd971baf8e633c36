package shinline.metrics.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LoadTest {

  /** The formulas as commonly quoted, worked out by hand for load 100; three decimals. */
  @ParameterizedTest
  @CsvSource({
    "EPLEY, 110.000, 116.667, 133.333",
    "BRZYCKI, 105.882, 112.500, 133.333",
    "LOMBARDI, 111.612, 117.462, 125.893",
    "LANDER, 107.197, 113.709, 134.070",
    "MAYHEW, 113.990, 119.011, 130.934",
    "OCONNER, 107.5, 112.5, 125.0",
    "WATHAN, 108.980, 116.583, 134.747"
  })
  void oneRepMax(OneRepMax formula, double three, double five, double ten) {
    Mass load = Mass.ofKg(100);
    assertThat(formula.estimate(load, 3).kg()).isCloseTo(three, within(6e-4));
    assertThat(formula.estimate(load, 5).kg()).isCloseTo(five, within(6e-4));
    assertThat(formula.estimate(load, 10).kg()).isCloseTo(ten, within(6e-4));
  }

  @ParameterizedTest
  @EnumSource(OneRepMax.class)
  void oneRepIsItself(OneRepMax formula) {
    assertThat(formula.estimate(Mass.ofKg(100), 1)).isEqualTo(Mass.ofKg(100));
    assertThatThrownBy(() -> formula.estimate(Mass.ofKg(100), 37)).hasMessageContaining("37 reps");
    assertThatThrownBy(() -> formula.estimate(Mass.ofKg(100), 0)).hasMessageContaining("0 reps");
  }

  /** 1 lb = 0.45359237 kg exactly. */
  @Test
  void pounds() {
    assertThat(Mass.ofLb(1).kg()).isEqualTo(0.45359237);
    assertThat(Mass.ofLb(225).kg()).isCloseTo(102.05828325, within(1e-11));
    assertThat(Mass.ofLb(225).lb()).isCloseTo(225, within(1e-12));
  }

  /** Definitions: .50 to .40 is 20 %; 45 against 50 is 90 %. */
  @Test
  void comparisons() {
    assertThat(Comparison.speedLoss(.5, .4)).isCloseTo(.2, within(1e-12));
    assertThat(Comparison.weakerOfStrongerPct(45, 50)).isCloseTo(90, within(1e-12));
    assertThat(Comparison.weakerOfStrongerPct(50, 45)).isCloseTo(90, within(1e-12));
  }

  /** MDC95 = 1.96 √2 SEM, two decimals. */
  @ParameterizedTest
  @CsvSource({"1.8, 4.99", "2.8, 7.76", "1.4, 3.88"})
  void changeLimit(double sem, double limit) {
    assertThat(Comparison.changeLimit95(sem)).isCloseTo(limit, within(0.0051));
  }
}
