package shinline.metrics.result;

import java.util.Optional;
import java.util.function.Function;

/** How a rep stands against one limit. */
public sealed interface Finding {

  /** Inside, and clear of the edge. */
  record Met(Limit limit) implements Finding {}

  /**
   * Outside, and clear of the edge.
   *
   * @param by how far beyond the end, in the limit's unit; positive
   * @param plusMinus of the value, same unit
   */
  record Outside(Limit limit, Limit.End end, double by, double plusMinus) implements Finding {
    /** The value found, in the limit's unit. */
    public double value() {
      return end == Limit.End.MAX ? bound() + by : bound() - by;
    }

    /** The end that was passed. */
    public double bound() {
      return end == Limit.End.MAX ? limit.max() : limit.min();
    }

    /** Whether the coach's margin still covers the distance. */
    public boolean withinMargin() {
      return by <= limit.margin();
    }
  }

  /**
   * So near to the limit that the ± of the value leaves its side open.
   *
   * @param beyond how far beyond the end, in the limit's unit; negative inside
   * @param plusMinus of the value, same unit
   */
  record TooClose(Limit limit, Limit.End end, double beyond, double plusMinus) implements Finding {}

  /**
   * Asked for, but not seen.
   *
   * @param why in words a coach understands
   */
  record Unmeasured(Limit limit, String why) implements Finding {}

  /** The rep is of another range than the one asked for. */
  record WrongRange(Range asked) implements Finding {}

  /** How far a rep goes down. */
  enum Range {
    FULL,
    SHORT
  }

  default <T> T fold(
      Function<Met, T> met,
      Function<Outside, T> outside,
      Function<TooClose, T> tooClose,
      Function<Unmeasured, T> unmeasured,
      Function<WrongRange, T> wrongRange) {
    if (this instanceof Met f) {
      return met.apply(f);
    } else if (this instanceof Outside f) {
      return outside.apply(f);
    } else if (this instanceof TooClose f) {
      return tooClose.apply(f);
    } else if (this instanceof Unmeasured f) {
      return unmeasured.apply(f);
    }
    return wrongRange.apply((WrongRange) this);
  }

  /** What the limit is set on; empty for the range, which is none of the measures. */
  default Optional<Aspect> aspect() {
    return this.<Optional<Limit>>fold(
            f -> Optional.of(f.limit),
            f -> Optional.of(f.limit),
            f -> Optional.of(f.limit),
            f -> Optional.of(f.limit),
            f -> Optional.empty())
        .map(Limit::aspect);
  }

  /** The verdict if this limit were the only one. */
  default Verdict verdict() {
    return fold(
        met -> Verdict.HIT,
        outside -> outside.withinMargin() ? Verdict.NEAR : Verdict.MISS,
        tooClose -> Verdict.UNCLEAR,
        unmeasured -> Verdict.UNCLEAR,
        wrongRange -> Verdict.MISS);
  }

  /** Plain words: amount, direction and limit; empty for a limit that is met. */
  default Optional<String> reason() {
    return fold(
        met -> Optional.empty(),
        f ->
            Optional.of(
                "%s %s %s (%s)"
                    .formatted(
                        f.limit.aspect().noun(),
                        Amount.of(f.by, f.limit.unit()),
                        f.limit.outside(f.end),
                        f.limit.end(f.end))),
        f ->
            Optional.of(
                "%s %s %s its limit, too close to call (%s, sure to within %s)"
                    .formatted(
                        f.limit.aspect().noun(),
                        Amount.of(f.beyond, f.limit.unit()),
                        f.beyond > 0 ? "outside" : "inside",
                        f.limit.end(f.end),
                        Amount.of(f.plusMinus, f.limit.unit()))),
        f -> Optional.of("%s not measured: %s".formatted(f.limit.aspect().noun(), f.why)),
        f ->
            Optional.of(
                f.asked == Range.FULL
                    ? "short range, full range was asked for"
                    : "full range, short range was asked for"));
  }
}
