package shinline.metrics.fault;

/**
 * A fault before its frame is looked up.
 *
 * @param atS when it shows, seconds from the first frame
 * @param value in the kind's unit
 * @param limit the limit it broke, in the kind's unit
 * @param baseline what the value is counted from
 */
public record Fault(FlagKind kind, double atS, double value, double limit, Baseline baseline) {

  /** How far beyond the limit, 0.5 at the limit to 1 at half as much again. */
  public double confidence() {
    double beyond = Math.abs(value - limit) / Math.max(1e-9, Math.abs(limit));
    return Math.min(1, 0.5 + beyond);
  }
}
