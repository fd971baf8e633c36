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
      return limit.bound(end);
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
   * @param kneePastToeFootPct what is known of a knee without centimetres, % of foot length
   */
  record Unmeasured(Limit limit, Gap gap, Optional<Double> kneePastToeFootPct) implements Finding {

    /** Of a limit that nothing else is known of. */
    public Unmeasured(Limit limit, Gap gap) {
      this(limit, gap, Optional.empty());
    }
  }

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
}
