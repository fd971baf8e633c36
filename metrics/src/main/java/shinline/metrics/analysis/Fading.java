package shinline.metrics.analysis;

import java.util.List;
import java.util.Optional;
import shinline.metrics.result.Flag;
import shinline.metrics.result.FlagKind;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;

/**
 * When form starts to go: from the first rep after which no rep is free of faults of form. A set
 * that is faulty from its first rep on does not fade, and a fault that the athlete mended is not
 * the start of it.
 */
final class Fading {
  /** Faults that mean form is going, in the order in which they are named. */
  private static final List<FlagKind> FADING =
      List.of(
          FlagKind.LEAN_GROWS,
          FlagKind.HIPS_FIRST,
          FlagKind.BACK_ROUNDS,
          FlagKind.BACK_ARCHES,
          FlagKind.HINGE_SHIFT,
          FlagKind.SHALLOW,
          FlagKind.DRIVE_SLOW,
          FlagKind.LOWERING_RUSHED,
          FlagKind.HOLD_SKIPPED,
          FlagKind.HEEL_RISE,
          FlagKind.FOREFOOT_RISE,
          FlagKind.REAR_PUSH,
          FlagKind.WOBBLE);

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
    return first(rep).map(kind -> new SetResult.Fading(rep.rep(), kind.jsonName()));
  }

  /** The fault of form that names a rep: the first of the list above that it shows. */
  private static Optional<FlagKind> first(RepResult rep) {
    List<FlagKind> kinds = rep.flags().stream().map(Flag::kind).toList();
    return FADING.stream().filter(kinds::contains).findFirst();
  }
}
