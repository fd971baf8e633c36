package shinline.metrics.bar;

import java.util.OptionalDouble;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.signal.ButterworthLowPass;
import shinline.metrics.signal.Series;
import shinline.metrics.statistics.LineFit;

/**
 * Mid-hip's height where a bar lies on the back. The rim of its disc is placed to a fraction of a
 * pixel, the hip, half hidden behind it, to some pixels; and what lies between them, the trunk,
 * changes its lean far more slowly than the athlete goes down and up. So the quick part of the
 * hip's height is taken from the bar's, and the slow part, its level and the trunk's lean with it,
 * stays the hip's own.
 */
public final class SteadiedHip {
  /** Seen outside of this, the disc is not of the size it is taken for. */
  private static final double LEAST_ALIKE = 0.82;

  private static final double MOST_ALIKE = 1.1;

  /** Fewer seconds in common tell no share. */
  private static final double LEAST_S = 2;

  /**
   * A disc on the back rises about as far as the hip: one that makes the athlete smaller or taller
   * than this, metres, does something else.
   */
  private static final double LEAST_STATURE_M = 1.1;

  private static final double MOST_STATURE_M = 2.6;

  /** Correlation below which the two do not move together. */
  private static final double TOGETHER = 0.95;

  /** What is added to the hip comes and goes within this where the bar is seen for a part only. */
  private static final double FADE_S = 0.3;

  private SteadiedHip() {}

  /**
   * @param hip height of mid-hip on the bar's grid, pixels
   * @param staturePx the athlete's, in the hip's plane
   * @param metresPerPx in that plane, where a length is known
   * @return in pixels, seen where the hip is; the hip as it was where the two do not move together
   */
  public static Series of(
      Series hip,
      BarPath bar,
      double staturePx,
      OptionalDouble metresPerPx,
      Calibration calibration) {
    int n = hip.size();
    double[] rise = new double[n];
    boolean[] both = new boolean[n];
    int seen = 0;
    for (int i = 0; i < n; i++) {
      both[i] = hip.seen(i) && bar.upM().seen(i);
      if (both[i]) {
        rise[i] = bar.upM().value(i);
        seen++;
      }
    }
    if (seen * bar.grid().stepS() < LEAST_S) {
      return hip;
    }
    double told = pxPerMetre(hip, rise, both);
    if (!(staturePx / told >= LEAST_STATURE_M && staturePx / told <= MOST_STATURE_M)) {
      return hip;
    }
    double perM =
        metresPerPx.isPresent() ? trusted(told, metresPerPx.getAsDouble(), calibration) : told;
    double[] apart = new double[n];
    for (int i = 0; i < n; i++) {
      apart[i] = both[i] ? hip.value(i) - perM * rise[i] : 0;
    }
    Series between = Series.of(hip.times(), apart, both);
    ButterworthLowPass slow =
        ButterworthLowPass.twoPass(
            calibration.value(CalibrationKey.BAR_HIP_SLOWEST), bar.grid().rateHz());
    Series level = between.mapRuns(slow::zeroPhase);
    double[] steadied = new double[n];
    boolean[] stays = new boolean[n];
    for (int i = 0; i < n; i++) {
      stays[i] = hip.seen(i);
      steadied[i] = stays[i] ? hip.value(i) : 0;
    }
    for (Series.Run run : between.runs()) {
      for (int i = run.from(); i < run.to(); i++) {
        double change = perM * rise[i] + level.value(i) - hip.value(i);
        steadied[i] += change * weight(i, run, hip, bar.grid().stepS());
      }
    }
    return Series.of(hip.times(), steadied, stays);
  }

  private static double trusted(double told, double metresPerPx, Calibration calibration) {
    double alike = told * metresPerPx;
    double trust = calibration.value(CalibrationKey.BAR_HIP_TRUST);
    return alike < LEAST_ALIKE || alike > MOST_ALIKE
        ? told
        : (trust * calibration.value(CalibrationKey.BAR_HIP_RISE) + (1 - trust) * alike)
            / metresPerPx;
  }

  /** How far the hip rises for a metre of the bar; not a number where they do not go together. */
  private static double pxPerMetre(Series hip, double[] rise, boolean[] both) {
    LineFit together = new LineFit();
    for (int i = 0; i < rise.length; i++) {
      if (both[i]) {
        together.add(rise[i], hip.value(i));
      }
    }
    return together.correlation() >= TOGETHER ? together.slope() : Double.NaN;
  }

  /** 1 but for the ends of a stretch beyond which the hip is seen and the bar is not. */
  private static double weight(int i, Series.Run run, Series hip, double stepS) {
    boolean before = run.from() > 0 && hip.seen(run.from() - 1);
    boolean after = run.to() < hip.size() && hip.seen(run.to());
    double in = before ? (i - run.from() + 1) * stepS / FADE_S : 1;
    double out = after ? (run.to() - i) * stepS / FADE_S : 1;
    return Math.min(1, Math.min(in, out));
  }
}
