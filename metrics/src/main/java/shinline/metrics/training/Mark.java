package shinline.metrics.training;

import java.time.LocalDate;

/**
 * Something noted for a date that is no set.
 *
 * @param id of its line
 */
public record Mark(String id, Place place, Kind kind) {

  /** What was noted. */
  public sealed interface Kind {}

  /** Pain in a set, whatever the set was for. */
  public record PainFelt() implements Kind {}

  /** A clinician's clearance after pain. */
  public record Cleared() implements Kind {}

  /** A gate passed, for example {@code hip-flexor-range}. */
  public record GatePassed(String gate) implements Kind {}

  /** The coach's word for a step, for example {@code short-range}. */
  public record Released(String step) implements Kind {}

  public LocalDate date() {
    return place.date();
  }
}
