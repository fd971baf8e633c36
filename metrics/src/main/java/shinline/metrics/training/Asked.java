package shinline.metrics.training;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the coach asked for.
 *
 * @param sets sets in the session, 1 or more; empty when not written down
 * @param reps reps in the set, 1 or more
 * @param target name of the shin target
 * @param tempo in the trade's notation
 * @param depth name of the depth
 */
public record Asked(
    OptionalInt sets, int reps, String target, Optional<String> tempo, Optional<String> depth) {

  public Asked {
    if (reps < 1 || sets.orElse(1) < 1) {
      throw new IllegalArgumentException("asked for " + sets + " sets of " + reps);
    }
  }
}
