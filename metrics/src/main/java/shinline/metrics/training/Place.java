package shinline.metrics.training;

import java.time.LocalDate;
import java.util.Comparator;

/**
 * Where an entry stands in time: by its date, and on one date by the order of lines.
 *
 * @param line number of the line in the record, from 1
 */
public record Place(LocalDate date, int line) implements Comparable<Place> {
  private static final Comparator<Place> ORDER =
      Comparator.comparing(Place::date).thenComparingInt(Place::line);

  public boolean isAfter(Place other) {
    return compareTo(other) > 0;
  }

  @Override
  public int compareTo(Place other) {
    return ORDER.compare(this, other);
  }
}
