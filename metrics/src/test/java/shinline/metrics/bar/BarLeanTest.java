package shinline.metrics.bar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.signal.Series;

/**
 * A trunk that stands 7° forward and turns about the hip: its top goes ahead by sin of the lean
 * less sin 7°, in trunk lengths, and the bar with it. Plain trigonometry.
 */
class BarLeanTest {
  private static final double STANDING_DEG = 7;
  private static final double EXACT = 1e-9;
  private static final double STEP_S = 1.0 / 30;

  /** Down from 1 to 3 s, held to 4 s, up to 5 s. */
  private static final RepTimes REP = new RepTimes(1, 3, 3.5, 4, 5);

  /** Where on the back the bar lies: ahead of the hip by so much in standing; it drops out. */
  private static final double LIES = 0.13;

  private static double ahead(double leanDeg) {
    return LIES + Math.sin(Math.toRadians(leanDeg)) - Math.sin(Math.toRadians(STANDING_DEG));
  }

  private static BarLean read(DoubleUnaryOperator leanDeg) {
    return read(leanDeg, -1, -1);
  }

  /** With a gap in which the disc was not seen. */
  private static BarLean read(DoubleUnaryOperator leanDeg, double gapFrom, double gapTo) {
    int n = 181;
    double[] t = new double[n];
    double[] v = new double[n];
    boolean[] seen = new boolean[n];
    for (int i = 0; i < n; i++) {
      t[i] = i * STEP_S;
      v[i] = ahead(leanDeg.applyAsDouble(t[i]));
      seen[i] = t[i] < gapFrom || t[i] > gapTo;
    }
    return BarLean.of(Series.of(t, v, seen), REP, 0.75);
  }

  /** Standing, then bottom, with a gain that rises and falls around an instant of the drive. */
  private static DoubleUnaryOperator lean(double bottomDeg, double gainDeg, double gainAtS) {
    return t ->
        t <= 1 || t >= 5
            ? STANDING_DEG
            : bottomDeg + gainDeg * Math.max(0, 1 - Math.abs(t - gainAtS) / 0.3);
  }

  @ParameterizedTest
  @ValueSource(doubles = {7, 12, 25, 60, -5})
  void theBottomIsToldAgainstStanding(double bottomDeg) {
    BarLean lean = read(lean(bottomDeg, 0, 4.4));
    assertThat(lean.bottomDeg().orElseThrow()).isCloseTo(bottomDeg - STANDING_DEG, within(EXACT));
  }

  @ParameterizedTest
  @ValueSource(doubles = {3, 8, 20})
  void theGainIsToldAgainstTheBottomWhereItIsMost(double gainDeg) {
    BarLean lean = read(lean(18, gainDeg, 4.4));
    assertThat(lean.gainDriveDeg().orElseThrow()).isCloseTo(gainDeg, within(EXACT));
    assertThat(lean.gainAtS()).isCloseTo(4.4, within(STEP_S));
  }

  /** Of a drive from 4 to 5 s the first 75 % count. */
  @Test
  void whatComesWhenTheDriveIsNearlyOverIsNoGain() {
    BarLean late = read(t -> t > 4.76 && t < 5 ? 40 : lean(18, 0, 4.4).applyAsDouble(t));
    assertThat(late.gainDriveDeg().orElseThrow()).isCloseTo(0, within(EXACT));
    BarLean early = read(t -> t > 4.7 && t < 4.74 ? 40 : lean(18, 0, 4.4).applyAsDouble(t));
    assertThat(early.gainDriveDeg().orElseThrow()).isCloseTo(22, within(EXACT));
  }

  @Test
  void aTrunkThatRisesAtOnceGainsNothing() {
    BarLean lean = read(t -> t <= 1 || t >= 4 ? STANDING_DEG : 20);
    // The bottom's own last tenth of a second.
    assertThat(lean.gainDriveDeg().orElseThrow()).isCloseTo(0, within(EXACT));
  }

  @Test
  void withoutStandingOrWithoutABottomNothingIsTold() {
    DoubleUnaryOperator motion = lean(18, 8, 4.4);
    assertThat(read(motion, 0.6, 1.1)).isEqualTo(BarLean.UNSEEN);
    assertThat(read(motion, 2.9, 4.1)).isEqualTo(BarLean.UNSEEN);
  }

  @Test
  void aDriveThatWasNotSeenHasNoGainButABottom() {
    BarLean lean = read(lean(18, 8, 4.4), 3.85, 5.1);
    assertThat(lean.gainDriveDeg()).isEqualTo(OptionalDouble.empty());
    assertThat(lean.bottomDeg().orElseThrow()).isCloseTo(11, within(EXACT));
  }

  /** A bar shoved farther ahead than any trunk reaches is a right angle, not a fault of ours. */
  @Test
  void noSineIsAboveOne() {
    BarLean lean = read(t -> t <= 1 || t >= 5 ? STANDING_DEG : 18 + (t > 4.3 && t < 4.5 ? 80 : 0));
    assertThat(lean.gainDriveDeg().orElseThrow()).isBetween(60.0, 72.0);
  }
}
