package shinline.metrics.progress;

import java.util.List;
import java.util.OptionalDouble;
import shinline.metrics.interval.IntervalModel;
import shinline.metrics.load.Comparison;

/**
 * Sessions of one leg in a row with the same asked for: step, target, depth, tempo and kind of
 * load. Only these are compared: another target changes the shin because it was asked to.
 *
 * @param values by date, at least one
 */
public record Stretch(Followed followed, Asking asking, List<SessionValue> values) {

  public Stretch {
    values = List.copyOf(values);
    if (values.isEmpty()) {
      throw new IllegalArgumentException("a stretch without sessions");
    }
  }

  public SessionValue first() {
    return values.get(0);
  }

  public SessionValue last() {
    return values.get(values.size() - 1);
  }

  /** From the first session to the last. */
  public double change() {
    return last().value() - first().value();
  }

  /**
   * Smallest change between two of these sessions that is real with 95 % confidence: 1.96 √2 SEM,
   * with the standard error of measurement pooled over the sessions (root of the mean square). 0
   * for a load, which is known exactly; empty where a session has no ±.
   */
  public OptionalDouble realChange() {
    if (followed == Followed.LOAD) {
      return OptionalDouble.of(0);
    }
    double squares = 0;
    for (SessionValue session : values) {
      OptionalDouble width = session.amount().forChange();
      if (width.isEmpty()) {
        return OptionalDouble.empty();
      }
      double sem = width.getAsDouble() / IntervalModel.NINETY_FIVE;
      squares += sem * sem;
    }
    return OptionalDouble.of(Comparison.changeLimit95(Math.sqrt(squares / values.size())));
  }

  /** Whether every ± is without the body's own bias. */
  public boolean withoutBodyBias() {
    return values.stream().allMatch(v -> v.amount().within().isPresent());
  }

  /** What the change from first to last session means. */
  public Change verdict() {
    OptionalDouble limit = realChange();
    if (values.size() < 2) {
      return Change.ONE_SESSION;
    }
    if (limit.isEmpty()) {
      return Change.UNKNOWN;
    }
    if (followed == Followed.LOAD && change() == 0) {
      return Change.SAME;
    }
    return Math.abs(change()) > limit.getAsDouble() ? Change.REAL : Change.WITHIN_ERROR;
  }

  /** What a change means. */
  public enum Change {
    /** Larger than the error of measurement explains. */
    REAL,
    /** The error of measurement alone may explain it. */
    WITHIN_ERROR,
    /** Known exactly, and none. */
    SAME,
    /** A session has no ±. */
    UNKNOWN,
    ONE_SESSION
  }
}
