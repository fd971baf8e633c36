package shinline.metrics.advice;

import java.util.List;
import java.util.Optional;
import shinline.metrics.ladder.Scheme;
import shinline.metrics.load.TrainingLoad;

/**
 * What to do.
 *
 * @param step id of the ladder's step
 * @param tempo empty for a step that is not on the ladder
 * @param load empty without load
 * @param notes the ladder's words on the step
 */
public record Prescription(
    String step,
    String target,
    Scheme scheme,
    Optional<String> tempo,
    Optional<TrainingLoad> load,
    List<String> notes) {

  public Prescription {
    notes = List.copyOf(notes);
  }
}
