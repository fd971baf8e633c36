package shinline.metrics.signal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import uk.me.berndporr.iirj.Butterworth;

class ButterworthLowPassTest {

  /** Ten decimals are given, so half of the last one, with room for rounding on the way. */
  private static final double TEN_DECIMALS = 1e-9;

  /**
   * Winter 2009 eq. 2.19 and worked example: cut-off 6 Hz, rate 60 Hz, one pass. Printed digits.
   */
  @Test
  void wintersOnePassCoefficients() {
    var c = ButterworthLowPass.onePass(6, 60).coefficients();
    assertThat(c.a0()).isCloseTo(.067455, within(5e-6));
    assertThat(c.a1()).isCloseTo(.13491, within(5e-6));
    assertThat(c.a2()).isCloseTo(.067455, within(5e-6));
    assertThat(c.b1()).isCloseTo(1.14298, within(2e-5));
    assertThat(c.b2()).isCloseTo(-.41280, within(2e-5));
  }

  /** Computed outside the project with scipy from the bilinear transform. */
  @Test
  void onePassCoefficientsInFull() {
    check(
        ButterworthLowPass.onePass(6, 60).coefficients(),
        .0674552739,
        .1349105478,
        1.1429805025,
        -.4128015981);
  }

  /** Computed outside the project with scipy, tan divided by Winter's C. */
  @Test
  void twoPassCoefficients() {
    check(
        ButterworthLowPass.twoPass(6, 60).coefficients(),
        .0944467439,
        .1888934878,
        .9626413088,
        -.3404282844);
    check(
        ButterworthLowPass.twoPass(6, 30).coefficients(),
        .2644937733,
        .5289875465,
        .1159765271,
        -.1739516202);
  }

  private static void check(
      ButterworthLowPass.Coefficients c, double a0, double a1, double b1, double b2) {
    assertThat(c.a0()).isCloseTo(a0, within(TEN_DECIMALS));
    assertThat(c.a1()).isCloseTo(a1, within(TEN_DECIMALS));
    assertThat(c.a2()).isCloseTo(a0, within(TEN_DECIMALS));
    assertThat(c.b1()).isCloseTo(b1, within(TEN_DECIMALS));
    assertThat(c.b2()).isCloseTo(b2, within(TEN_DECIMALS));
  }

  /** C for two passes: Winter 2009, six decimals. */
  @Test
  void correction() {
    assertThat(ButterworthLowPass.TWO_PASS_CORRECTION).isCloseTo(0.802243, within(5e-7));
  }

  /** Two-pass gains at 60/6 by definition (computed), five decimals; and no delay. */
  @ParameterizedTest
  @CsvSource({"1, .99972", "3, .97715", "6, .70711", "10, .19496", "15, .02620"})
  void sineComesBackInPhaseWithTheGain(double hz, double gain) {
    gain(ButterworthLowPass.twoPass(6, 60), hz, gain, 6e-6);
  }

  @Test
  void withoutCorrectionTwoPassesHalveAtTheCutOff() {
    gain(ButterworthLowPass.onePass(6, 60), 6, 0.5, 1e-9);
  }

  private static void gain(ButterworthLowPass filter, double hz, double gain, double tolerance) {
    double[] x = new double[600];
    for (int i = 0; i < x.length; i++) {
      x[i] = Math.sin(2 * Math.PI * hz * i / 60 + 0.3);
    }
    double[] y = filter.zeroPhase(x);
    for (int i = 100; i < 500; i++) {
      assertThat(y[i]).isCloseTo(gain * x[i], within(tolerance));
    }
  }

  /**
   * Reference: iirj 1.7, an independent implementation, run forward and backward over an impulse;
   * its cut-off is the one that Winter's correction leads to.
   */
  @Test
  void impulseResponseOfTheReferenceLibrary() {
    double c = Math.sqrt(Math.sqrt(Math.sqrt(2) - 1));
    double widened = Math.atan(Math.tan(Math.PI * 6 / 60) / c) * 60 / Math.PI;
    double[] x = new double[400];
    x[200] = 1;
    double[] wanted = reversed(reference(reversed(reference(x, widened)), widened));
    double[] y = ButterworthLowPass.twoPass(6, 60).zeroPhase(x);
    assertThat(y).containsExactly(wanted, within(1e-12));
  }

  private static double[] reference(double[] x, double cutoffHz) {
    Butterworth filter = new Butterworth();
    filter.lowPass(2, 60, cutoffHz);
    return Arrays.stream(x).map(filter::filter).toArray();
  }

  private static double[] reversed(double[] x) {
    return IntStream.range(0, x.length).mapToDouble(i -> x[x.length - 1 - i]).toArray();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 7, 15, 16, 200})
  void constantsAndStraightLinesComeBack(int n) {
    double[] flat = new double[n];
    double[] line = new double[n];
    for (int i = 0; i < n; i++) {
      flat[i] = 96.5;
      line[i] = 3 - 0.7 * i;
    }
    var filter = ButterworthLowPass.twoPass(6, 30);
    // Odd reflection continues a line as a line; its start-up transient fades over the padding.
    assertThat(filter.zeroPhase(flat)).containsExactly(flat, within(1e-10));
    assertThat(filter.zeroPhase(line)).containsExactly(line, within(1e-5));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void filteringIsLinearAndBlindToTheDirectionOfTime(long seed) {
    Random random = new Random(seed);
    double[] x = random.doubles(120, -1, 1).toArray();
    double[] scaled = new double[120];
    double[] reversed = new double[120];
    for (int i = 0; i < 120; i++) {
      scaled[i] = 4 * x[i] + 10;
      reversed[i] = x[119 - i];
    }
    var filter = ButterworthLowPass.twoPass(6, 30);
    double[] y = filter.zeroPhase(x);
    double[] ys = filter.zeroPhase(scaled);
    double[] yr = filter.zeroPhase(reversed);
    for (int i = 0; i < 120; i++) {
      assertThat(ys[i]).isCloseTo(4 * y[i] + 10, within(1e-9));
      // The two orders differ only by what is left of the start-up after the padding.
      assertThat(yr[119 - i]).isCloseTo(y[i], within(1e-4));
    }
  }

  @Test
  void refusesACutOffBeyondHalfTheRate() {
    assertThatThrownBy(() -> ButterworthLowPass.twoPass(15, 30)).hasMessageContaining("15.0 Hz");
  }
}
