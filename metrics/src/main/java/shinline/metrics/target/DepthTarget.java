package shinline.metrics.target;

import java.util.Optional;

/**
 * How deep the rep should go. Limits left empty are not judged.
 *
 * @param name "full", "short-range", or a name of the coach's own
 * @param maxThighDeg thigh angle at the bottom at most this (0 = parallel, + hip above knee)
 * @param maxRearKneeCm rear-knee height at the bottom at most this
 * @param minHipTravelCm hip travel at least this
 * @param shortRangeAsked whether short-range reps are what is asked for
 */
public record DepthTarget(
    String name,
    Optional<Double> maxThighDeg,
    Optional<Double> maxRearKneeCm,
    Optional<Double> minHipTravelCm,
    boolean shortRangeAsked) {

  /** Thigh within 15 degrees of parallel (common practice). */
  public static DepthTarget full() {
    return new DepthTarget("full", Optional.of(15.0), Optional.empty(), Optional.empty(), false);
  }

  /** A quarter of the range, driven fast (common practice). */
  public static DepthTarget quarterRange() {
    return new DepthTarget(
        "short-range", Optional.empty(), Optional.empty(), Optional.empty(), true);
  }

  /** What of it one posture can show. */
  DepthTarget ofPosture() {
    return new DepthTarget(name, maxThighDeg, maxRearKneeCm, Optional.empty(), false);
  }

  /** Depth is not judged. */
  public static DepthTarget any() {
    return new DepthTarget("any", Optional.empty(), Optional.empty(), Optional.empty(), false);
  }
}
