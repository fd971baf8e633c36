package shinline.metrics.progress;

import java.time.LocalDate;
import java.util.List;

/**
 * What one leg showed in one session.
 *
 * @param sets ids of the sets it rests on, at least one
 */
public record SessionValue(LocalDate date, Amount amount, List<String> sets) {
  public SessionValue {
    sets = List.copyOf(sets);
  }

  public double value() {
    return amount.value();
  }
}
