package shinline.metrics.result;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.metrics.back.BackLine;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.fault.Sight;
import shinline.metrics.reps.NotCounted;
import shinline.metrics.target.Target;

/**
 * All that is said of one set.
 *
 * @param trend slope over the reps of each measure that has one, unit a rep
 * @param fading where form began to fade, if it did
 * @param summary how the set stands, in short
 * @param unseen what could not be judged → the reps in which it was not seen, at least one
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
    Map<Sight, List<Integer>> unseen,
    Map<Integer, BackLine> backs,
    List<NotCounted> notCounted) {

  public SetResult {
    notCounted = List.copyOf(notCounted);
    EnumMap<Sight, List<Integer>> gaps = new EnumMap<>(Sight.class);
    gaps.putAll(unseen);
    unseen = Collections.unmodifiableMap(gaps);
    backs = Map.copyOf(backs);
    reps = List.copyOf(reps);
    trend = Map.copyOf(trend);
  }

  /** Reps that did what was asked; empty when nothing was. */
  public Optional<Long> hits() {
    return reps.stream().allMatch(r -> r.verdict().isEmpty())
        ? Optional.empty()
        : Optional.of(
            reps.stream().filter(r -> r.verdict().equals(Optional.of(Verdict.HIT))).count());
  }

  /**
   * @param rep from which on no rep is free of faults of form
   * @param kind of fault that this rep shows
   */
  public record Fading(int rep, FlagKind kind) {}
}
