package shinline.cli.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Flag;
import shinline.metrics.result.RepResult;

/**
 * One thing to work on: a fault and the reps that show it.
 *
 * @param worst the flag of this kind that is surest
 * @param reps numbers of the reps that show it
 */
public record WorkOn(FlagKind kind, Flag worst, List<Integer> reps) {
  /** More than two things at once and an athlete changes none of them (common practice). */
  private static final int AT_ONCE = 2;

  public WorkOn {
    reps = List.copyOf(reps);
  }

  /**
   * The things that matter most, first one first: weight of the kind times the sureness of its
   * flags, over the reps that have it.
   */
  public static List<WorkOn> of(List<RepResult> set) {
    Map<FlagKind, List<Flag>> flags = new EnumMap<>(FlagKind.class);
    Map<FlagKind, List<Integer>> reps = new EnumMap<>(FlagKind.class);
    for (RepResult rep : set) {
      for (Flag flag : rep.flags()) {
        flags.computeIfAbsent(flag.kind(), k -> new ArrayList<>()).add(flag);
        List<Integer> seen = reps.computeIfAbsent(flag.kind(), k -> new ArrayList<>());
        if (!seen.contains(rep.rep())) {
          seen.add(rep.rep());
        }
      }
    }
    return flags.entrySet().stream()
        .sorted(
            Comparator.comparingDouble(
                    (Map.Entry<FlagKind, List<Flag>> e) -> urgency(e.getKey(), e.getValue()))
                .reversed())
        .limit(AT_ONCE)
        .map(
            e ->
                new WorkOn(
                    e.getKey(),
                    e.getValue().stream()
                        .max(Comparator.comparingDouble(Flag::confidence))
                        .orElseThrow(),
                    reps.getOrDefault(e.getKey(), List.of())))
        .toList();
  }

  private static double urgency(FlagKind kind, List<Flag> flags) {
    return weight(kind) * flags.stream().mapToDouble(Flag::confidence).sum();
  }

  /**
   * Our own order: the back before the foot, the foot before the target, the target before tempo. A
   * target met with a lifted heel or a borrowed back is not met.
   */
  private static int weight(FlagKind kind) {
    return switch (kind) {
      case BACK_ROUNDS, BACK_ARCHES, HIPS_FIRST -> 5;
      case LEAN_GROWS, HINGE_SHIFT, HEEL_RISE -> 4;
      case FOREFOOT_RISE, SHIN_OFF_TARGET, SHALLOW -> 3;
      case REAR_PUSH, LOWERING_RUSHED, HOLD_SKIPPED -> 2;
      case WOBBLE, DRIVE_SLOW -> 1;
    };
  }
}
