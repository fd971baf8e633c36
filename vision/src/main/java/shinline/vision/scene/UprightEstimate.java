package shinline.vision.scene;

import java.util.Optional;
import java.util.function.Function;

/**
 * How far the picture's vertical is off the true vertical.
 *
 * <p><b>Sign.</b> {@code rollDeg} is the angle from the picture's vertical to the true vertical,
 * clockwise positive. Example: the phone was turned counter-clockwise by 3° (as its holder sees
 * it); a door frame then leans to the right at its top in the upright picture, by 3°, and the roll
 * is +3. A body segment that leans to the right by 10° in that picture leans to the right by 10° −
 * 3° = 7° in truth.
 */
public sealed interface UprightEstimate {

  /**
   * The room's lines agree on a vertical.
   *
   * @param rollDeg angle from the picture's vertical to the true vertical, degrees, clockwise
   *     positive
   * @param plusMinusDeg half width of the 95 % interval, degrees
   * @param linesUsed distinct background lines that carry the estimate
   * @param uprights how the uprights converge, which tells the pitch; empty when too few are seen
   *     too close together. Positive: a line to the right of the centre leans to the right at its
   *     top, so the camera looks down
   * @param levels how the level lines along a wall converge, which tells how far the camera is off
   *     square to it; empty as above. Positive: lines below the horizon rise to the right, so the
   *     wall's right end is the farther one
   */
  record Found(
      double rollDeg,
      double plusMinusDeg,
      int linesUsed,
      Optional<Convergence> uprights,
      Optional<Convergence> levels)
      implements UprightEstimate {
    @Override
    public <T> T fold(Function<Found, T> found, Function<Unsure, T> unsure) {
      return found.apply(this);
    }
  }

  /**
   * Lines that are parallel in the room and run through one vanishing point of the picture.
   *
   * @param perLongSide tangent of the camera's angle to them over the focal length in longer sides
   *     of the picture
   * @param plusMinus half width of its 95 % interval
   */
  record Convergence(double perLongSide, double plusMinus) {}

  /**
   * No vertical can be read honestly from this room.
   *
   * @param doubt why
   */
  record Unsure(Doubt doubt) implements UprightEstimate {
    @Override
    public <T> T fold(Function<Found, T> found, Function<Unsure, T> unsure) {
      return unsure.apply(this);
    }
  }

  /** What speaks against every vertical. */
  enum Doubt {
    /** Too few straight lines are in the background. */
    FEW_LINES,
    /** Two verticals fit the lines nearly as well. */
    LINES_DISAGREE,
    /** The lines leave the vertical open within a wide interval. */
    WIDE_INTERVAL
  }

  /** Handles both cases. */
  <T> T fold(Function<Found, T> found, Function<Unsure, T> unsure);
}
