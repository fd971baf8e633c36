package shinline.metrics.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import shinline.metrics.ladder.AdviceLimits;
import shinline.metrics.ladder.Step;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.track.Side;
import shinline.metrics.training.RecordedSet;

/**
 * One date at one step and target.
 *
 * @param legs those on record, at least one
 */
record Session(LocalDate date, List<LegSession> legs) {

  /** The sessions of a step and target, by date. */
  static List<Session> of(
      List<RecordedSet> workSets, Step step, String target, AdviceLimits.Sets limits) {
    Map<LocalDate, List<RecordedSet>> byDate = new TreeMap<>();
    for (RecordedSet set : workSets) {
      if (set.entry().step().equals(step.id()) && set.entry().asked().target().equals(target)) {
        byDate.computeIfAbsent(set.date(), d -> new ArrayList<>()).add(set);
      }
    }
    return byDate.entrySet().stream()
        .map(day -> new Session(day.getKey(), legs(day.getValue(), step, limits)))
        .toList();
  }

  private static List<LegSession> legs(
      List<RecordedSet> sets, Step step, AdviceLimits.Sets limits) {
    return Stream.of(Side.values())
        .flatMap(
            leg -> {
              List<RecordedSet> done = sets.stream().filter(s -> s.entry().leg() == leg).toList();
              return done.isEmpty()
                  ? Stream.<LegSession>empty()
                  : Stream.of(LegSession.of(leg, done, step, limits));
            })
        .toList();
  }

  Optional<LegSession> leg(Side side) {
    return legs.stream().filter(l -> l.leg() == side).findFirst();
  }

  /** The lightest among the asked sets of the weaker leg. */
  Optional<TrainingLoad> load() {
    return legs.stream()
        .flatMap(l -> l.load().stream())
        .min(Comparator.comparing(TrainingLoad::mass));
  }

  boolean hasLoad(Optional<TrainingLoad> other) {
    Optional<TrainingLoad> own = load();
    return own.isPresent() == other.isPresent()
        && (own.isEmpty() || own.get().sameAs(other.orElseThrow()));
  }

  boolean earned() {
    return legs.size() == Side.values().length && legs.stream().allMatch(LegSession::everySetGood);
  }

  List<String> lines() {
    return legs.stream().flatMap(l -> l.lines().stream()).toList();
  }
}
