package shinline.metrics.advice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.ladder.Step;
import shinline.metrics.ladder.StepLoad;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.training.Mark;
import shinline.metrics.training.TrainingHistory;

/**
 * What a step asks for whose loads are shares of the three-rep maximum: the coach's release, of an
 * adult, and the maximum itself.
 *
 * @param missing empty when the athlete may enter
 */
record Admission(
    Step step,
    StepLoad.OfThreeRepMaximum loading,
    Optional<ThreeRepMaximum> maximum,
    List<Missing> missing) {

  /** Of age by the year of birth; where that is not known the coach's word stands for it. */
  private static final int ADULT_YEARS = 18;

  static Admission to(
      Step step,
      StepLoad.OfThreeRepMaximum loading,
      Ladder ladder,
      TrainingHistory history,
      LocalDate asOf) {
    List<Missing> missing = new ArrayList<>();
    boolean minor =
        history.profile().birthYear().stream().anyMatch(y -> asOf.getYear() - y < ADULT_YEARS);
    if (minor) {
      missing.add(new Missing.AdultsOnly(step.id()));
    } else if (history
        .last(k -> k instanceof Mark.Released r && r.step().equals(loading.release()))
        .isEmpty()) {
      missing.add(new Missing.Release(step.id()));
    }
    Optional<ThreeRepMaximum> maximum =
        ThreeRepMaximum.lately(history, ladder, loading.maximumDays(), asOf);
    if (maximum.isEmpty()) {
      missing.add(new Missing.ThreeRepMaximum(loading.maximumDays()));
    }
    return new Admission(step, loading, maximum, List.copyOf(missing));
  }

  /** The first prescription of the step; only with a maximum. */
  Prescription start(Ladder ladder) {
    ThreeRepMaximum found = maximum.orElseThrow();
    TrainingLoad load =
        new LoadChoice(ladder).roundedDown(found.mass().percent(loading.fromPct()), found.kind());
    return new Prescription(
        step.id(),
        step.firstTarget(),
        ShareOfMaximum.scheme(loading, load, found),
        Optional.of(step.tempo()),
        Optional.of(load),
        step.notes());
  }
}
