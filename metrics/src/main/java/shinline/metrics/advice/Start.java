package shinline.metrics.advice;

import java.util.Optional;
import shinline.metrics.ladder.Step;
import shinline.metrics.load.TrainingLoad;

/** The beginning of a step: first target, first sets and reps. */
final class Start {
  private Start() {}

  static Prescription at(Step step, Optional<TrainingLoad> load) {
    return new Prescription(
        step.id(),
        step.firstTarget(),
        step.firstScheme(),
        Optional.of(step.tempo()),
        load,
        step.notes());
  }
}
