package shinline.metrics.signal;

import java.util.ArrayList;
import java.util.List;
import shinline.metrics.statistics.PolynomialFit;

/**
 * Chooses a cut-off from the signal itself. The residual R(fc) is the root mean square of what a
 * two-pass filter takes away. At high cut-offs only noise is taken away and R(fc) is nearly a
 * straight line; that line carried down to fc = 0 gives the noise, and the cut-off is where R(fc)
 * equals it.
 *
 * <ol>
 *   <li>D. A. Winter, <i>Biomechanics and Motor Control of Human Movement</i>, 2nd ed., Wiley 1990,
 *       pp. 41–43.
 * </ol>
 */
public final class ResidualAnalysis {
  /**
   * Lowest and highest cut-off chosen, Hz; 6 Hz is the gait convention (Winter 2009), a split squat
   * is slower.
   */
  public static final double LEAST_HZ = 4;

  public static final double MOST_HZ = 6;

  /** Step of the curve. */
  private static final double STEP_HZ = 0.25;

  /**
   * Highest cut-off of the curve as a part of the rate: short of half of it, where the filter stops
   * filtering.
   */
  private static final double HIGHEST = 0.4;

  /** Where the straight part begins, as a part of the highest cut-off. */
  private static final double TAIL_FROM = 0.65;

  /** Least samples from which a curve means anything: one second at 30 a second. */
  private static final int LEAST_SAMPLES = 30;

  private ResidualAnalysis() {}

  /** R at one cut-off, in the unit of the signal. */
  public record Residual(double cutoffHz, double rms) {}

  /**
   * @param cutoffHz the cut-off to use
   * @param noiseRms the straight line's value at 0 Hz: the noise that was in the signal, in its
   *     unit
   */
  public record Choice(double cutoffHz, double noiseRms) {}

  /** Root mean square of what the two-pass filter takes away at one cut-off. */
  public static double residual(double[] x, double cutoffHz, double rateHz) {
    double[] smooth = ButterworthLowPass.twoPass(cutoffHz, rateHz).zeroPhase(x);
    double sum = 0;
    for (int i = 0; i < x.length; i++) {
      double away = x[i] - smooth[i];
      sum += away * away;
    }
    return Math.sqrt(sum / x.length);
  }

  /** The curve R(fc). */
  public static List<Residual> curve(double[] x, double rateHz) {
    if (x.length < LEAST_SAMPLES) {
      throw new IllegalArgumentException(
          x.length + " samples are too few, " + LEAST_SAMPLES + " are needed");
    }
    List<Residual> curve = new ArrayList<>();
    for (int k = 1; k * STEP_HZ <= HIGHEST * rateHz + 1e-9; k++) {
      curve.add(new Residual(k * STEP_HZ, residual(x, k * STEP_HZ, rateHz)));
    }
    if (curve.size() < 4) {
      throw new IllegalArgumentException("a rate of " + rateHz + " Hz leaves no curve");
    }
    return List.copyOf(curve);
  }

  /**
   * Winter's choice, held within the bounds.
   *
   * @param x evenly spaced samples, 30 or more
   * @param rateHz samples a second
   */
  public static Choice choose(double[] x, double rateHz) {
    List<Residual> curve = curve(x, rateHz);
    double noise = Math.max(0, interceptOfTail(curve));
    double found = curve.get(curve.size() - 1).cutoffHz();
    for (int k = 0; k < curve.size(); k++) {
      if (curve.get(k).rms() <= noise) {
        found = k == 0 ? curve.get(0).cutoffHz() : between(curve.get(k - 1), curve.get(k), noise);
        break;
      }
    }
    return new Choice(Math.max(LEAST_HZ, Math.min(MOST_HZ, found)), noise);
  }

  private static double between(Residual a, Residual b, double level) {
    double part = a.rms() == b.rms() ? 1 : (a.rms() - level) / (a.rms() - b.rms());
    return a.cutoffHz() + part * (b.cutoffHz() - a.cutoffHz());
  }

  private static double interceptOfTail(List<Residual> curve) {
    double from = TAIL_FROM * curve.get(curve.size() - 1).cutoffHz();
    List<Residual> tail = curve.stream().filter(r -> r.cutoffHz() >= from).toList();
    double[] x = tail.stream().mapToDouble(Residual::cutoffHz).toArray();
    return new PolynomialFit(x, 1).through(tail.stream().mapToDouble(Residual::rms).toArray())[0];
  }
}
