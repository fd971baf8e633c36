package shinline.metrics.training;

import java.time.LocalDate;

/**
 * A set on record, with corrections and reviews applied.
 *
 * @param id of its line
 * @param line number of its line
 */
public record RecordedSet(String id, int line, SetEntry entry) {

  public Place place() {
    return new Place(entry.date(), line);
  }

  public LocalDate date() {
    return entry.date();
  }
}
