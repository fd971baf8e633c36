package shinline.metrics.bar;

import java.util.OptionalDouble;
import shinline.metrics.reps.BottomWindow;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.signal.Series;
import shinline.metrics.statistics.RobustStatistics;

/**
 * What the bar's end tells of the trunk when its disc hides the shoulders: how far it has gone
 * ahead of the hip since the athlete stood, as a turn of the trunk. Changes only: where on the back
 * the bar lies nobody sees. A turn of the shoulders by 2° moves the bar's end by 2 to 3 cm, so it
 * is coarse from rep to rep, and much finer within one drive.
 *
 * @param bottomDeg leans more at the bottom than standing before the rep
 * @param gainDriveDeg most lean gained from the bottom within the first part of the drive
 * @param gainAtS when that was
 */
public record BarLean(OptionalDouble bottomDeg, OptionalDouble gainDriveDeg, double gainAtS) {
  public static final BarLean UNSEEN =
      new BarLean(OptionalDouble.empty(), OptionalDouble.empty(), 0);

  /** Standing before a rep is taken over this long. */
  private static final double TOP_S = 0.3;

  /**
   * Lean in the split stance with a bar on the back, degrees; 7 to 9 in clips (common practice).
   */
  private static final double STANDING_DEG = 7;

  /**
   * Reads it off one rep.
   *
   * @param aheadOfHip bar's end ahead of mid-hip, shares of the trunk's length
   * @param until the part of the drive in which hips rise first, share of its time
   */
  public static BarLean of(Series aheadOfHip, RepTimes t, double until) {
    OptionalDouble top =
        RobustStatistics.median(
            aheadOfHip.seenValues(s -> s >= t.startS() - TOP_S && s <= t.startS()));
    OptionalDouble bottom = BottomWindow.of(t).bottomMedian(aheadOfHip);
    if (top.isEmpty() || bottom.isEmpty()) {
      return UNSEEN;
    }
    double low = leanDeg(bottom.getAsDouble() - top.getAsDouble());
    double early = t.intoDrive(until);
    double most = Double.NEGATIVE_INFINITY;
    double at = t.bottomEndS();
    for (int i = 0; i < aheadOfHip.size(); i++) {
      double s = aheadOfHip.timeS(i);
      if (aheadOfHip.seen(i) && s >= t.bottomEndS() - 0.1 && s <= early) {
        double lean = leanDeg(aheadOfHip.value(i) - top.getAsDouble());
        if (lean > most) {
          most = lean;
          at = s;
        }
      }
    }
    return new BarLean(
        OptionalDouble.of(low - STANDING_DEG),
        Double.isInfinite(most) ? OptionalDouble.empty() : OptionalDouble.of(most - low),
        at);
  }

  /**
   * @param ahead further ahead of the hip than standing, shares of the trunk's length
   */
  private static double leanDeg(double ahead) {
    double sine = Math.sin(Math.toRadians(STANDING_DEG)) + ahead;
    return Math.toDegrees(Math.asin(Math.max(-1, Math.min(1, sine))));
  }
}
