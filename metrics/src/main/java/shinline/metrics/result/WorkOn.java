package shinline.metrics.result;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import shinline.metrics.fault.FlagKind;

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
   * flags, over the reps that have it; of two alike, the weightier kind.
   */
  public static List<WorkOn> of(List<RepResult> set) {
    return all(set).stream().limit(AT_ONCE).toList();
  }

  /** Every kind of fault in the set, in the same order. */
  public static List<WorkOn> all(List<RepResult> set) {
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
                .thenComparing(e -> e.getKey().weight())
                .reversed())
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
    return kind.weight() * flags.stream().mapToDouble(Flag::confidence).sum();
  }
}
