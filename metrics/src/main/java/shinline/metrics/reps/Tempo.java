package shinline.metrics.reps;

import java.util.OptionalDouble;

/**
 * Lengths of the phases of a rep, seconds, 0 or more.
 *
 * @param topS rest before the next lowering; empty when no rep follows in the same stretch of film
 */
public record Tempo(double loweringS, double holdS, double driveS, OptionalDouble topS) {
  public Tempo {
    if (!(loweringS >= 0 && holdS >= 0 && driveS >= 0 && topS.orElse(0) >= 0)) {
      throw new IllegalArgumentException(
          "phases of " + loweringS + ", " + holdS + ", " + driveS + ", " + topS + " s");
    }
  }
}
