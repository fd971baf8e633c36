package shinline.metrics.signal;

import java.util.ArrayList;
import java.util.List;

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
 *
 * @param stepHz step of the curve; default 0.25 Hz
 * @param highest highest cut-off of the curve as a part of the rate; default 0.4, short of half the
 *     rate where the filter stops filtering
 * @param tailFrom where the straight part begins, as a part of the highest cut-off; default 0.65
 * @param leastHz lowest cut-off chosen; default 3 Hz, a quick drive needs it
 * @param mostHz highest cut-off chosen; default 8 Hz; hips and knees in a lift have nothing above
 */
public record ResidualAnalysis(
    double stepHz, double highest, double tailFrom, double leastHz, double mostHz) {

  public static final ResidualAnalysis DEFAULT = new ResidualAnalysis(0.25, 0.4, 0.65, 3, 8);

  /** Least samples from which a curve means anything: one second at 30 a second. */
  private static final int LEAST_SAMPLES = 30;

  public ResidualAnalysis {
    boolean good =
        stepHz > 0
            && highest > 0
            && highest < 0.5
            && tailFrom > 0
            && tailFrom < 1
            && leastHz > 0
            && leastHz <= mostHz;
    if (!good) {
      throw new IllegalArgumentException(
          "step "
              + stepHz
              + " Hz, highest "
              + highest
              + ", tail from "
              + tailFrom
              + ", bounds "
              + leastHz
              + " to "
              + mostHz
              + " Hz");
    }
  }

  /** R at one cut-off, in the unit of the signal. */
  public record Residual(double cutoffHz, double rms) {}

  /** Where the choice came to lie. */
  public enum Bound {
    WITHIN,
    HELD_UP_TO_LEAST,
    HELD_DOWN_TO_MOST
  }

  /**
   * @param cutoffHz the cut-off to use
   * @param noiseRms the straight line's value at 0 Hz: the noise that was in the signal, in its
   *     unit
   * @param curve R(fc), cut-offs rising
   */
  public record Choice(double cutoffHz, double noiseRms, Bound bound, List<Residual> curve) {
    public Choice {
      curve = List.copyOf(curve);
    }
  }

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
  public List<Residual> curve(double[] x, double rateHz) {
    if (x.length < LEAST_SAMPLES) {
      throw new IllegalArgumentException(
          x.length + " samples are too few, " + LEAST_SAMPLES + " are needed");
    }
    List<Residual> curve = new ArrayList<>();
    for (int k = 1; k * stepHz <= highest * rateHz + 1e-9; k++) {
      curve.add(new Residual(k * stepHz, residual(x, k * stepHz, rateHz)));
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
  public Choice choose(double[] x, double rateHz) {
    List<Residual> curve = curve(x, rateHz);
    double noise = Math.max(0, interceptOfTail(curve));
    double found = curve.get(curve.size() - 1).cutoffHz();
    for (int k = 0; k < curve.size(); k++) {
      if (curve.get(k).rms() <= noise) {
        found = k == 0 ? curve.get(0).cutoffHz() : between(curve.get(k - 1), curve.get(k), noise);
        break;
      }
    }
    if (found < leastHz) {
      return new Choice(leastHz, noise, Bound.HELD_UP_TO_LEAST, curve);
    }
    if (found > mostHz) {
      return new Choice(mostHz, noise, Bound.HELD_DOWN_TO_MOST, curve);
    }
    return new Choice(found, noise, Bound.WITHIN, curve);
  }

  private static double between(Residual a, Residual b, double level) {
    double part = a.rms() == b.rms() ? 1 : (a.rms() - level) / (a.rms() - b.rms());
    return a.cutoffHz() + part * (b.cutoffHz() - a.cutoffHz());
  }

  private double interceptOfTail(List<Residual> curve) {
    double from = tailFrom * curve.get(curve.size() - 1).cutoffHz();
    List<Residual> tail = curve.stream().filter(r -> r.cutoffHz() >= from).toList();
    double meanX = tail.stream().mapToDouble(Residual::cutoffHz).average().orElseThrow();
    double meanY = tail.stream().mapToDouble(Residual::rms).average().orElseThrow();
    double sxx = 0;
    double sxy = 0;
    for (Residual r : tail) {
      sxx += (r.cutoffHz() - meanX) * (r.cutoffHz() - meanX);
      sxy += (r.cutoffHz() - meanX) * (r.rms() - meanY);
    }
    return sxx == 0 ? meanY : meanY - sxy / sxx * meanX;
  }
}
