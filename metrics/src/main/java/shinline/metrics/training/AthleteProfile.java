package shinline.metrics.training;

import java.util.Optional;
import java.util.OptionalInt;
import shinline.metrics.load.Mass;

/**
 * What is known of an athlete.
 *
 * @param startStep id of the step the coach chose to start at
 */
public record AthleteProfile(
    OptionalInt birthYear, Optional<Mass> bodyMass, Optional<String> startStep) {

  public static AthleteProfile unknown() {
    return new AthleteProfile(OptionalInt.empty(), Optional.empty(), Optional.empty());
  }
}
