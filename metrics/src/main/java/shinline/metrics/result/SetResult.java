package shinline.metrics.result;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.metrics.back.BackLine;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.reps.NotCounted;
import shinline.metrics.target.Target;

/**
 * All that is said of one set.
 *
 * @param trend slope over the reps of each measure that has one, unit a rep
 * @param fading where form began to fade, if it did
 * @param summary how the set stands, in short
 * @param backs number of a rep with a flag of the back → the back as the flag was read from it
 * @param notCounted ways down and back, and stretches in which there may be one, that are no rep of
 *     the set, in order of time
 */
public record SetResult(
    SetUp setUp,
    Target target,
    List<RepResult> reps,
    Map<Measure, Double> trend,
    Optional<Fading> fading,
    SetSummary summary,
    SeriesTable series,
    Map<Integer, BackLine> backs,
    List<NotCounted> notCounted) {

  /** With every way down and back counted. */
  public SetResult(
      SetUp setUp,
      Target target,
      List<RepResult> reps,
      Map<Measure, Double> trend,
      Optional<Fading> fading,
      SetSummary summary,
      SeriesTable series,
      Map<Integer, BackLine> backs) {
    this(setUp, target, reps, trend, fading, summary, series, backs, List.of());
  }

  /** Without a flag of the back. */
  public SetResult(
      SetUp setUp,
      Target target,
      List<RepResult> reps,
      Map<Measure, Double> trend,
      Optional<Fading> fading,
      SetSummary summary,
      SeriesTable series) {
    this(setUp, target, reps, trend, fading, summary, series, Map.of());
  }

  public SetResult {
    notCounted = List.copyOf(notCounted);
    backs = Map.copyOf(backs);
    reps = List.copyOf(reps);
    trend = Map.copyOf(trend);
  }

  public long hits() {
    return reps.stream().filter(r -> r.verdict() == Verdict.HIT).count();
  }

  /**
   * @param rep from which on no rep is free of faults of form
   * @param kind of fault that this rep shows
   */
  public record Fading(int rep, FlagKind kind) {}
}
