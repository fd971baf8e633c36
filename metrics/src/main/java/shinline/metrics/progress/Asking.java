package shinline.metrics.progress;

import java.util.Optional;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.training.SetEntry;

/** What has to be the same for two sessions to be compared. */
public record Asking(
    String step, String target, Optional<String> depth, Optional<String> tempo, LoadKind kind) {

  static Asking of(SetEntry set) {
    return new Asking(
        set.step(),
        set.asked().target(),
        set.asked().depth(),
        set.asked().tempo(),
        set.load().map(TrainingLoad::kind).orElse(LoadKind.NONE));
  }
}
