package shinline.metrics.reps;

import java.util.List;

/** The reps of a clip in order, and what looked like one and is none. */
public record RepSearch(List<Rep> reps, List<NotCounted> notCounted) {
  public RepSearch {
    reps = List.copyOf(reps);
    notCounted = List.copyOf(notCounted);
  }
}
