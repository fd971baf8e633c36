package shinline.metrics.result;

import java.util.Optional;

/**
 * One thing asked for.
 *
 * @param band name of the shin band; empty for limits that have no name
 * @param min lower end, in {@code unit}; negative infinity when open
 * @param max upper end, in {@code unit}; positive infinity when open
 * @param margin how far outside still counts as near, in {@code unit}
 */
public record Limit(
    Aspect aspect, Optional<String> band, double min, double max, double margin, MeasureUnit unit) {
  public Limit {
    if (!(min <= max) || !(margin >= 0)) {
      throw new IllegalArgumentException(
          "limit from " + min + " to " + max + " with margin " + margin);
    }
  }

  /** An end of the allowed range. */
  public enum End {
    MIN,
    MAX
  }

  /** The end that matters for a value: the one it is furthest beyond, or nearest to. */
  public End nearestEnd(double value) {
    return min - value > value - max ? End.MIN : End.MAX;
  }

  /** How far the value is beyond that end, in {@code unit}; negative inside. */
  public double beyond(double value) {
    return Math.max(min - value, value - max);
  }

  /** Where the allowed range ends, in {@code unit}. */
  public double bound(End end) {
    return end == End.MIN ? min : max;
  }
}
