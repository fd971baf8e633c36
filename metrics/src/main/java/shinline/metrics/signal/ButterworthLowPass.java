package shinline.metrics.signal;

/**
 * Second-order Butterworth low-pass filter: the gait laboratory's usual smoothing of marker paths.
 *
 * <p>Run forward and then backward it delays nothing, so the instant of the lowest hip stays where
 * it was. Two passes halve the power twice at the cut-off; Winter's correction widens each pass so
 * that the pair has the asked-for cut-off (gain 0.7071 there).
 *
 * <ol>
 *   <li>D. A. Winter, <i>Biomechanics and Motor Control of Human Movement</i>, 4th ed., Wiley 2009,
 *       eq. 2.19 and the text on the number of passes.
 * </ol>
 */
public final class ButterworthLowPass {

  /** Winter's C for two passes, (2^(1/2) - 1)^(1/4); multiplies tan(pi fc / fs) by 1 / C. */
  public static final double TWO_PASS_CORRECTION = Math.pow(Math.sqrt(2) - 1, 0.25);

  /** Points of reflection at either end, at least. */
  private static final int LEAST_PADDING = 15;

  private final Coefficients coefficients;
  private final double cutoffHz;
  private final double rateHz;

  /**
   * Winter's form: y[n] = a0 x[n] + a1 x[n-1] + a2 x[n-2] + b1 y[n-1] + b2 y[n-2]. Note the plus
   * before b: most software has it the other way round.
   */
  public record Coefficients(double a0, double a1, double a2, double b1, double b2) {}

  private ButterworthLowPass(double cutoffHz, double rateHz, double correction) {
    if (!(cutoffHz > 0 && Double.isFinite(rateHz) && cutoffHz < rateHz / 2)) {
      throw new IllegalArgumentException(
          "cut-off " + cutoffHz + " Hz must lie between 0 and half the rate of " + rateHz + " Hz");
    }
    this.cutoffHz = cutoffHz;
    this.rateHz = rateHz;
    double w = Math.tan(Math.PI * cutoffHz / rateHz) / correction;
    double k1 = Math.sqrt(2) * w;
    double k2 = w * w;
    double a0 = k2 / (1 + k1 + k2);
    double a2 = a0;
    double a1 = 2 * a0;
    double k3 = a1 / k2;
    double b1 = -2 * a0 + k3;
    double b2 = 1 - 2 * a0 - k3;
    this.coefficients = new Coefficients(a0, a1, a2, b1, b2);
  }

  /**
   * For one pass, as tables give it: gain 0.7071 at the cut-off after one pass.
   *
   * @param cutoffHz above 0, below half the rate
   * @param rateHz samples a second, evenly spaced
   */
  static ButterworthLowPass onePass(double cutoffHz, double rateHz) {
    return new ButterworthLowPass(cutoffHz, rateHz, 1);
  }

  /**
   * For {@link #zeroPhase}: gain 0.7071 at the cut-off after both passes.
   *
   * @param cutoffHz above 0, below half the rate
   * @param rateHz samples a second, evenly spaced
   */
  public static ButterworthLowPass twoPass(double cutoffHz, double rateHz) {
    return new ButterworthLowPass(cutoffHz, rateHz, TWO_PASS_CORRECTION);
  }

  public Coefficients coefficients() {
    return coefficients;
  }

  public double cutoffHz() {
    return cutoffHz;
  }

  public double rateHz() {
    return rateHz;
  }

  /**
   * Forward and backward: no delay. Both ends are continued by odd reflection about the end point,
   * 15 points or one and a half cut-off periods, whichever is more, and each pass starts in the
   * steady state of its first value, so a constant comes back unchanged.
   *
   * @param x evenly spaced samples at {@link #rateHz}; any length
   * @return as many samples
   */
  public double[] zeroPhase(double[] x) {
    if (x.length < 2) {
      return x.clone();
    }
    int pad = Math.max(LEAST_PADDING, (int) Math.ceil(1.5 * rateHz / cutoffHz));
    double[] padded = new double[x.length + 2 * pad];
    for (int i = 0; i < padded.length; i++) {
      padded[i] = reflected(x, i - pad);
    }
    double[] there = pass(padded, padded[0]);
    reverse(there);
    double[] back = pass(there, there[0]);
    reverse(back);
    double[] out = new double[x.length];
    System.arraycopy(back, pad, out, 0, out.length);
    return out;
  }

  /** The filter over every run of a series by itself; missing samples stay missing. */
  public Series zeroPhase(Series even) {
    return even.mapRuns(this::zeroPhase);
  }

  /** Odd reflection about the end points, as often as it takes for short signals. */
  private static double reflected(double[] x, int i) {
    int last = x.length - 1;
    double value = 0;
    double sign = 1;
    int at = i;
    while (at < 0 || at > last) {
      value += sign * 2 * (at < 0 ? x[0] : x[last]);
      sign = -sign;
      at = at < 0 ? -at : 2 * last - at;
    }
    return value + sign * x[at];
  }

  private double[] pass(double[] x, double steady) {
    Coefficients c = coefficients;
    double z2 = (c.a2 + c.b2) * steady;
    double z1 = (c.a1 + c.b1) * steady + z2;
    double[] y = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      y[i] = c.a0 * x[i] + z1;
      z1 = c.a1 * x[i] + c.b1 * y[i] + z2;
      z2 = c.a2 * x[i] + c.b2 * y[i];
    }
    return y;
  }

  private static void reverse(double[] x) {
    for (int i = 0, j = x.length - 1; i < j; i++, j--) {
      double kept = x[i];
      x[i] = x[j];
      x[j] = kept;
    }
  }
}
