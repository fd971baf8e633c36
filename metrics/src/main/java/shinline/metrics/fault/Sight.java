package shinline.metrics.fault;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * A part of the athlete that faults are read from. Where it was not seen, that no fault was found
 * means nothing.
 */
public enum Sight {
  BACK(rep -> rep.back().isPresent()),
  TRUNK(rep -> rep.leanBottomDeg().isPresent()),
  FRONT_FOOT(rep -> rep.heelRise().isPresent() && rep.forefootRise().isPresent()),
  REAR_LEG(rep -> rep.rearOpenDeg().isPresent()),
  FRONT_KNEE(rep -> rep.wobble().isPresent());

  private final Predicate<RepEvidence> seen;

  Sight(Predicate<RepEvidence> seen) {
    this.seen = seen;
  }

  /**
   * What was not seen.
   *
   * @param reps in their order
   * @return each part with the numbers, from 1, of the reps in which it could not be judged
   */
  public static Map<Sight, List<Integer>> missing(List<RepEvidence> reps) {
    Map<Sight, List<Integer>> missing = new EnumMap<>(Sight.class);
    for (Sight sight : values()) {
      for (int k = 0; k < reps.size(); k++) {
        if (!sight.seen.test(reps.get(k))) {
          missing.computeIfAbsent(sight, s -> new ArrayList<>()).add(k + 1);
        }
      }
    }
    return missing;
  }
}
