package shinline.metrics.advice;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.ladder.Step;
import shinline.metrics.ladder.StepLoad;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.OneRepMax;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.track.Side;
import shinline.metrics.training.Purpose;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.TrainingHistory;

/**
 * The load of three clean full-range reps, estimated from a set on record.
 *
 * <p>Each leg's is the best its clean test and work sets with a bar give; the weaker leg decides.
 *
 * @param mass estimate, not rounded to what is at hand
 * @param set the set it comes from
 */
public record ThreeRepMaximum(Mass mass, LoadKind kind, OneRepMax formula, RecordedSet set) {
  private static final int REPS = 3;
  private static final String SHORT_RANGE = "short-range";

  /** The maximum from the sets of the days up to a day. */
  static Optional<ThreeRepMaximum> lately(
      TrainingHistory history, Ladder ladder, int days, LocalDate day) {
    LocalDate from = day.minusDays(days);
    List<ThreeRepMaximum> all =
        candidates(history, ladder).filter(m -> !m.set.date().isBefore(from)).toList();
    return Stream.of(Side.values())
        .flatMap(leg -> best(all, leg).stream())
        .min(Comparator.comparing(ThreeRepMaximum::mass));
  }

  /** As {@link #lately}; where the days have no set, from the last days that had. */
  static Optional<ThreeRepMaximum> lastKnown(
      TrainingHistory history, Ladder ladder, int days, LocalDate day) {
    Optional<ThreeRepMaximum> lately = lately(history, ladder, days, day);
    return lately.isPresent()
        ? lately
        : candidates(history, ladder)
            .map(m -> m.set.date())
            .max(Comparator.naturalOrder())
            .flatMap(last -> lately(history, ladder, days, last));
  }

  private static Optional<ThreeRepMaximum> best(List<ThreeRepMaximum> all, Side leg) {
    return all.stream()
        .filter(m -> m.set.entry().leg() == leg)
        .max(Comparator.comparing(ThreeRepMaximum::mass).thenComparing(m -> m.set.place()));
  }

  private static Stream<ThreeRepMaximum> candidates(TrainingHistory history, Ladder ladder) {
    return history.sets().stream()
        .filter(s -> s.entry().purpose() == Purpose.WORK || s.entry().purpose() == Purpose.TEST)
        .filter(s -> fullRange(s, ladder))
        .filter(s -> clean(s, ladder))
        .flatMap(s -> of(s, ladder.maximum()).stream());
  }

  private static boolean fullRange(RecordedSet set, Ladder ladder) {
    boolean shortStep =
        ladder
            .step(set.entry().step())
            .map(Step::load)
            .filter(StepLoad.OfThreeRepMaximum.class::isInstance)
            .isPresent();
    return !shortStep && set.entry().asked().depth().filter(SHORT_RANGE::equals).isEmpty();
  }

  private static boolean clean(RecordedSet set, Ladder ladder) {
    SetCounts counts = set.entry().counts();
    return counts.cleanReps() > 0
        && counts.notClean() == 0
        && SetQuality.of(set, ladder.limits().sets()) != SetQuality.TOO_DARK;
  }

  private static Optional<ThreeRepMaximum> of(RecordedSet set, OneRepMax formula) {
    int reps = set.entry().counts().cleanReps();
    Optional<TrainingLoad> load = set.entry().load().filter(l -> l.kind().isBar());
    return load.filter(l -> reps <= OneRepMax.MOST_REPS)
        .map(
            l ->
                new ThreeRepMaximum(
                    formula.repMaximum(l.mass(), reps, REPS), l.kind(), formula, set));
  }
}
