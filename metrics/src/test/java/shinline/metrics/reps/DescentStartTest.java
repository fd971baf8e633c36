package shinline.metrics.reps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Descents that are known in closed form. */
final class DescentStartTest {
  private static final double TOP = 90;
  private static final double LOW = 55;
  private static final double BEGINS_S = 1;
  private static final double STEP_S = 2 / 15.0;

  /** Height of a hip that comes down like a pendulum within a time. */
  private static double height(double timeS, double lastsS) {
    double part = Math.min(1, Math.max(0, (timeS - BEGINS_S) / lastsS));
    return TOP - (TOP - LOW) * (1 - Math.cos(Math.PI * part)) / 2;
  }

  /** 1 − 2 · 0.05 = cos of the angle at which a twentieth of the way is behind. */
  private static double truth(double lastsS) {
    return BEGINS_S + lastsS * Math.acos(0.9) / Math.PI;
  }

  private static double told(double lastsS, double shiftS, double noise, Random random) {
    double[] t = new double[30];
    double[] h = new double[30];
    for (int i = 0; i < t.length; i++) {
      t[i] = shiftS + i * STEP_S;
      h[i] = height(t[i], lastsS) + noise * random.nextGaussian();
    }
    return new DescentStart(t, h, TOP, LOW).timeS(lastAbove(h));
  }

  private static int lastAbove(double[] h) {
    int above = h.length - 2;
    while (!(h[above] >= TOP - 0.05 * (TOP - LOW) && h[above + 1] < TOP - 0.05 * (TOP - LOW))) {
      above--;
    }
    return above;
  }

  @Test
  void aSlowPendulumIsToldExactlyWhereverItsSamplesLie() {
    for (double shiftS = 0; shiftS < STEP_S; shiftS += 0.02) {
      assertThat(told(3, shiftS, 0, new Random(1))).isCloseTo(truth(3), within(1e-9));
    }
  }

  @Test
  void noiseMovesItLessThanItMovesTwoSamples() {
    Random random = new Random(11);
    double line = 0;
    double two = 0;
    int count = 400;
    for (int k = 0; k < count; k++) {
      double[] t = new double[30];
      double[] h = new double[30];
      for (int i = 0; i < t.length; i++) {
        t[i] = 0.0003 * k + i * STEP_S;
        h[i] = height(t[i], 2.5) + 0.4 * random.nextGaussian();
      }
      int above = lastAbove(h);
      double level = TOP - 0.05 * (TOP - LOW);
      double linear = t[above] + STEP_S * (h[above] - level) / (h[above] - h[above + 1]);
      double told = new DescentStart(t, h, TOP, LOW).timeS(above);
      line += Math.pow(told - truth(2.5), 2) / count;
      two += Math.pow(linear - truth(2.5), 2) / count;
    }
    assertThat(Math.sqrt(line)).isLessThan(0.9 * Math.sqrt(two));
  }

  @Test
  void aQuickDescentOfFewSamplesIsToldByTwo() {
    double[] t = {0, 0.1, 0.2, 0.3, 0.4};
    double[] h = {90, 90, 86.5, 60, 55};
    // Half way from 90 to 86.5 lies a twentieth of 35 below the top.
    assertThat(new DescentStart(t, h, TOP, LOW).timeS(1)).isCloseTo(0.15, within(1e-12));
  }

  @Test
  void aDescentAtOneSpeedIsToldWithinATenthOfASecond() {
    double[] t = new double[40];
    double[] h = new double[40];
    for (int i = 0; i < t.length; i++) {
      t[i] = i * 0.1;
      h[i] = Math.max(LOW, Math.min(TOP, TOP - 10 * (t[i] - 1)));
    }
    assertThat(new DescentStart(t, h, TOP, LOW).timeS(lastAbove(h))).isCloseTo(1.175, within(0.1));
  }
}
