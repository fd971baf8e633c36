package shinline.metrics.progress;

import java.util.Map;
import shinline.metrics.training.RecordedSet;

/**
 * A set on record with what was measured of it.
 *
 * @param amounts means over its reps, as far as measured; no masses
 * @param reps numbers of each rep, by its number from 1, as far as kept
 */
public record FollowedSet(
    RecordedSet set, Map<Followed, Amount> amounts, Map<Integer, Map<Followed, Double>> reps) {

  public FollowedSet {
    amounts = Map.copyOf(amounts);
    reps = Map.copyOf(reps);
    if (amounts.keySet().stream().anyMatch(Followed::isMass)) {
      throw new IllegalArgumentException("masses come from the set: " + amounts.keySet());
    }
  }
}
