package shinline.metrics.advice;

import java.util.List;
import java.util.Optional;
import shinline.metrics.ladder.Leaving;
import shinline.metrics.ladder.Step;
import shinline.metrics.ladder.StepLoad;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.training.Mark;

/** The next target of the step in force, after the last one the next step. */
record NextLevel(Situation now) {

  Outcome outcome() {
    int target = now.targetIndex();
    if (target < 0) {
      return stay(Rule.TARGET_UNKNOWN)
          .missing(new Missing.TargetUnknown(now.step().id(), now.target()));
    }
    return target + 1 < now.step().targets().size()
        ? Outcome.of(
            Decision.NEXT_TARGET,
            nextTarget(now.step().targets().get(target + 1)),
            Rule.NEXT_TARGET,
            now.session().lines())
        : nextStep();
  }

  private Prescription nextTarget(String target) {
    Optional<TrainingLoad> load =
        now.load()
            .filter(l -> now.step().isLoaded())
            .map(
                l ->
                    new LoadChoice(now.ladder()).shareOf(l, now.ladder().limits().nextTargetPct()));
    return now.with(target, now.scheme(), load);
  }

  private Outcome nextStep() {
    Optional<Step> after = now.ladder().after(now.step());
    if (after.isEmpty()) {
      return stay(Rule.TOP_OF_LADDER).missing(new Missing.TopOfLadder());
    }
    Step step = after.get();
    if (now.step().leaving() instanceof Leaving.GateOnRecord gate) {
      Optional<Mark> passed = new LeavingCheck(now).passed(gate.gate());
      return passed
          .map(mark -> enter(step).because(Rule.LEAVING_CONDITION, List.of(mark.id())))
          .orElseGet(
              () -> stay(Rule.STEP_CLOSED).missing(new Missing.Gate(gate.gate(), step.id())));
    }
    return enter(step);
  }

  private Outcome enter(Step step) {
    if (step.load() instanceof StepLoad.OfThreeRepMaximum loading) {
      return enterShares(step, loading);
    }
    Optional<TrainingLoad> load =
        step.load() instanceof StepLoad.Weekly weekly
            ? Optional.of(new LoadChoice(now.ladder()).first(weekly, now.load(), now.history()))
            : Optional.empty();
    return Outcome.of(
        Decision.NEXT_STEP, Start.at(step, load), Rule.NEXT_STEP, now.session().lines());
  }

  private Outcome enterShares(Step step, StepLoad.OfThreeRepMaximum loading) {
    Admission admission = Admission.to(step, loading, now.ladder(), now.history(), now.asOf());
    return admission.maximum().isPresent() && admission.missing().isEmpty()
        ? Outcome.of(
                Decision.NEXT_STEP,
                admission.start(now.ladder()),
                Rule.NEXT_STEP,
                now.session().lines())
            .restingOn(admission.maximum().get())
        : stay(Rule.STEP_CLOSED).missing(admission.missing());
  }

  private Outcome stay(Rule rule) {
    return Outcome.of(Decision.STAY, now.again(), rule, now.session().lines());
  }
}
