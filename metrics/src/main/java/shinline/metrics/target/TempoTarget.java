package shinline.metrics.target;

import java.util.Optional;

/** Asked-for phase lengths; a phase left empty is not judged. */
public record TempoTarget(
    Optional<Phase> lowering, Optional<Phase> hold, Optional<Phase> drive, Optional<Phase> top) {

  /**
   * @param minS shortest that counts, seconds
   * @param maxS longest that counts, seconds; infinite when open
   */
  public record Phase(double minS, double maxS) {
    public Phase {
      if (!(minS >= 0 && minS <= maxS)) {
        throw new IllegalArgumentException("phase from " + minS + " to " + maxS + " s");
      }
    }
  }

  /**
   * Seconds either way when none are given; a coach counting aloud is no closer (common practice).
   */
  public static final double DEFAULT_TOLERANCE_S = 0.5;

  public static TempoTarget any() {
    return new TempoTarget(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }
}
