package shinline.metrics.advice;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.ladder.Leaving;
import shinline.metrics.ladder.Scheme;
import shinline.metrics.ladder.Step;
import shinline.metrics.ladder.StepLoad;
import shinline.metrics.training.Mark;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.SetEntry;
import shinline.metrics.training.TrainingHistory;

/**
 * Decides what is next for an athlete. The rules are asked in the order of docs/ladder.md; the
 * first that holds decides. All are common practice.
 */
public final class Advisor {
  private static final List<NextRule> RULES =
      List.of(
          new BreakRule(),
          new StepBackRule(),
          new LegMissingRule(),
          new StepUnknownRule(),
          new EarnedRule(),
          new StayRule());

  private final Ladder ladder;

  public Advisor(Ladder ladder) {
    this.ladder = ladder;
  }

  /**
   * @param all everything on record of the athlete
   * @param asOf the day the advice is for; what is dated later is not looked at
   */
  public Advice advise(TrainingHistory all, LocalDate asOf) {
    TrainingHistory history = all.until(asOf);
    List<Mark> pains = painNotCleared(history);
    if (!pains.isEmpty()) {
      return stop(pains, asOf);
    }
    List<RecordedSet> work = history.workSets();
    Outcome outcome = work.isEmpty() ? begin(history, asOf) : decide(history, work, asOf);
    return new Advice(
        asOf,
        outcome.decision(),
        Optional.of(outcome.prescription()),
        outcome.because(),
        outcome.missing(),
        outcome.earliest(),
        asOf.plusDays(ladder.limits().goodForDays()),
        outcome.maximum());
  }

  private static List<Mark> painNotCleared(TrainingHistory history) {
    Optional<Mark> cleared = history.last(Mark.Cleared.class::isInstance);
    Predicate<Mark> later = m -> cleared.filter(c -> c.place().isAfter(m.place())).isEmpty();
    return history.marks().stream()
        .filter(m -> m.kind() instanceof Mark.PainFelt)
        .filter(later)
        .toList();
  }

  private Advice stop(List<Mark> pains, LocalDate asOf) {
    return new Advice(
        asOf,
        Decision.STOP,
        Optional.empty(),
        List.of(new Because(Rule.PAIN_NOT_CLEARED, pains.stream().map(Mark::id).toList())),
        List.of(new Missing.Clearance(pains.get(pains.size() - 1).date())),
        Optional.empty(),
        asOf.plusDays(ladder.limits().goodForDays()),
        Optional.empty());
  }

  /** The first step, or the one the coach chose for the athlete. */
  private Outcome begin(TrainingHistory history, LocalDate asOf) {
    Optional<Step> chosen = history.profile().startStep().flatMap(ladder::step);
    Step step = chosen.orElse(ladder.first());
    Outcome outcome = beginAt(step, history, asOf).missing(new Missing.WorkSet());
    return chosen.isPresent() ? outcome.because(Rule.START_STEP, List.of()) : outcome;
  }

  private Outcome beginAt(Step step, TrainingHistory history, LocalDate asOf) {
    if (step.load() instanceof StepLoad.OfThreeRepMaximum loading) {
      Admission admission = Admission.to(step, loading, ladder, history, asOf);
      Optional<Step> before = ladder.before(step);
      if (admission.missing().isEmpty()) {
        return none(admission.start(ladder)).restingOn(admission.maximum().orElseThrow());
      } else if (before.isPresent()) {
        return beginAt(before.get(), history, asOf).missing(admission.missing());
      }
      return none(Start.at(step, Optional.empty())).missing(admission.missing());
    }
    return none(
        Start.at(
            step,
            step.load() instanceof StepLoad.Weekly weekly
                ? Optional.of(new LoadChoice(ladder).first(weekly, Optional.empty(), history))
                : Optional.empty()));
  }

  private static Outcome none(Prescription prescription) {
    return Outcome.of(Decision.NOT_ENOUGH, prescription, Rule.NO_WORK_SET, List.of());
  }

  private Outcome decide(TrainingHistory history, List<RecordedSet> work, LocalDate asOf) {
    RecordedSet last = work.get(work.size() - 1);
    Step step = ladder.step(last.entry().step()).orElseGet(() -> madeUpFrom(last.entry()));
    List<Session> sessions =
        Session.of(work, step, last.entry().asked().target(), ladder.limits().sets());
    Situation now = new Situation(ladder, history, asOf, last, step, sessions);
    return RULES.stream()
        .flatMap(rule -> rule.decide(now).stream())
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("the last rule always holds"));
  }

  /** A step that is not on the ladder can still be repeated or eased. */
  private static Step madeUpFrom(SetEntry entry) {
    OptionalInt sets = entry.asked().sets();
    return new Step(
        entry.step(),
        "",
        List.of(entry.asked().target()),
        List.of(new Scheme(sets.orElse(1), entry.asked().reps())),
        entry.asked().tempo().orElse(""),
        new StepLoad.Unloaded(),
        new Leaving.Never(),
        List.of());
  }
}
