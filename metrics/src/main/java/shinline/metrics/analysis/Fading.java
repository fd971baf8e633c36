package shinline.metrics.analysis;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.fault.Form;
import shinline.metrics.result.Flag;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;

/**
 * When form starts to go: from the first rep after which no rep is free of faults of form. A set
 * that is faulty from its first rep on does not fade, and a fault that the athlete mended is not
 * the start of it.
 */
final class Fading {
  private Fading() {}

  /** Empty when the last rep is clean, or no rep is. */
  static Optional<SetResult.Fading> of(List<RepResult> reps) {
    int from = reps.size();
    while (from > 0 && first(reps.get(from - 1)).isPresent()) {
      from--;
    }
    if (from == 0 || from == reps.size()) {
      return Optional.empty();
    }
    RepResult rep = reps.get(from);
    return first(rep).map(kind -> new SetResult.Fading(rep.rep(), kind));
  }

  /**
   * The fault of form that names a rep: that of the first part of form, in the catalogue's order.
   */
  private static Optional<FlagKind> first(RepResult rep) {
    return rep.flags().stream()
        .map(Flag::kind)
        .filter(kind -> kind.form() != Form.TARGET)
        .min(Comparator.comparing(FlagKind::form).thenComparing(Comparator.naturalOrder()));
  }
}
