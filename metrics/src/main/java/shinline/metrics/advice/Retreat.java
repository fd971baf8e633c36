package shinline.metrics.advice;

import java.math.BigDecimal;
import java.util.Optional;
import shinline.metrics.ladder.Scheme;
import shinline.metrics.ladder.Step;
import shinline.metrics.ladder.StepLoad;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.training.RecordedSet;

/** The way back: a lighter load, else the target before, else the step before. */
record Retreat(Situation now) {

  /** A lower load at the same step and target. */
  Optional<Prescription> lighter(BigDecimal pct) {
    return now.load()
        .flatMap(l -> new LoadChoice(now.ladder()).lower(l, pct))
        .map(l -> now.with(now.target(), scheme(l), Optional.of(l)));
  }

  /**
   * The target before, else the step before with its last target; empty at the very first.
   *
   * @param pct of the load last carried there, where that step has a load
   */
  Optional<Prescription> back(BigDecimal pct) {
    int target = now.targetIndex();
    if (target > 0) {
      return Optional.of(now.with(now.step().targets().get(target - 1), now.scheme(), now.load()));
    }
    return now.ladder()
        .before(now.step())
        .map(
            step ->
                new Prescription(
                    step.id(),
                    step.lastTarget(),
                    step.firstScheme(),
                    Optional.of(step.tempo()),
                    loadThere(step, pct),
                    step.notes()));
  }

  private Optional<TrainingLoad> loadThere(Step step, BigDecimal pct) {
    LoadChoice choice = new LoadChoice(now.ladder());
    Optional<TrainingLoad> last =
        now.history().workSets().stream()
            .map(RecordedSet::entry)
            .filter(e -> e.step().equals(step.id()))
            .flatMap(e -> e.load().stream())
            .reduce((a, b) -> b);
    if (!step.isLoaded()) {
      return Optional.empty();
    } else if (last.isPresent()) {
      return Optional.of(choice.shareOf(last.get(), pct));
    }
    return step.load() instanceof StepLoad.Weekly weekly
        ? Optional.of(choice.first(weekly, Optional.empty(), now.history()))
        : Optional.empty();
  }

  /** Sets and reps go with the share of the maximum, where the step goes by that. */
  private Scheme scheme(TrainingLoad load) {
    return new ShareOfMaximum(now).scheme(load).orElse(now.scheme());
  }
}
