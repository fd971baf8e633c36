package shinline.metrics.result;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.metrics.target.Target;

/**
 * All that is said of one set.
 *
 * @param trend slope over the reps of each measure that has one, unit a rep
 * @param fading where form began to fade, if it did
 * @param summary one plain sentence
 */
public record SetResult(
    SetUp setUp,
    Target target,
    List<RepResult> reps,
    Map<Measure, Double> trend,
    Optional<Fading> fading,
    String summary,
    SeriesTable series) {
  public SetResult {
    reps = List.copyOf(reps);
    trend = Map.copyOf(trend);
  }

  public long hits() {
    return reps.stream().filter(r -> r.verdict() == Verdict.HIT).count();
  }

  /**
   * @param rep from which on no rep is free of faults of form
   * @param what the kind of fault that this rep shows, as the JSON names it
   */
  public record Fading(int rep, String what) {}
}
