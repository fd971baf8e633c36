package shinline.metrics.reps;

import java.util.OptionalDouble;
import shinline.metrics.signal.Series;
import shinline.metrics.statistics.RobustStatistics;

/**
 * The time over which "at bottom" values are taken: the hold, or the 0.1 s around the lowest
 * instant, whichever is longer.
 *
 * @param fromS seconds
 * @param toS seconds, not before {@code fromS}
 * @param lowestS the lowest instant, seconds, within the window
 */
public record BottomWindow(double fromS, double toS, double lowestS) {

  /** Least length, seconds (definition of "at bottom", docs/measures.md). */
  public static final double LEAST_S = 0.1;

  /** So that rounding of a frame time does not decide whether a frame is inside. */
  private static final double TIME_SLACK_S = 1e-6;

  public BottomWindow {
    if (!(fromS <= lowestS && lowestS <= toS)) {
      throw new IllegalArgumentException("window " + fromS + " to " + toS + ", lowest " + lowestS);
    }
  }

  public static BottomWindow of(RepTimes times) {
    double holdS = times.bottomEndS() - times.bottomStartS();
    return holdS >= LEAST_S
        ? new BottomWindow(times.bottomStartS(), times.bottomEndS(), times.lowestS())
        : new BottomWindow(
            times.lowestS() - LEAST_S / 2, times.lowestS() + LEAST_S / 2, times.lowestS());
  }

  public boolean holds(double timeS) {
    return timeS >= fromS - TIME_SLACK_S && timeS <= toS + TIME_SLACK_S;
  }

  /** Median of the seen samples inside the window; empty when none was seen there. */
  public OptionalDouble bottomMedian(Series series) {
    return RobustStatistics.median(series.seenValues(this::holds));
  }
}
