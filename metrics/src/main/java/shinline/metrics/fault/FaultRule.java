package shinline.metrics.fault;

import java.util.Optional;
import java.util.OptionalDouble;

/** Tells whether a rep shows one kind of fault. */
@FunctionalInterface
interface FaultRule {
  /** For a kind that is found elsewhere. */
  FaultRule NEVER = (rep, set) -> Optional.empty();

  /** Empty when the limit is kept, or what it takes was not seen. */
  Optional<Breach> of(RepEvidence rep, SetEvidence set);

  /**
   * A limit that was broken.
   *
   * @param atS when it shows best, seconds from the first frame
   * @param value in the kind's unit
   * @param limit in the kind's unit
   * @param baseline what the value is counted from
   */
  record Breach(double atS, double value, double limit, Baseline baseline) {

    /** Counted from no posture. */
    Breach(double atS, double value, double limit) {
      this(atS, value, limit, Baseline.OTHER);
    }

    Breach since(Baseline from) {
      return new Breach(atS, value, limit, from);
    }

    /** Of shares, in per cent. */
    static Breach ofShares(double atS, double share, double limit) {
      return new Breach(atS, 100 * share, 100 * limit);
    }

    /** Empty when the value was not seen, or is not above the limit. */
    static Optional<Breach> above(double atS, OptionalDouble value, double limit) {
      return value.isPresent() && value.getAsDouble() > limit
          ? Optional.of(new Breach(atS, value.getAsDouble(), limit))
          : Optional.empty();
    }
  }
}
