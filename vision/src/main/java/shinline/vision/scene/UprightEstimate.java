package shinline.vision.scene;

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
   */
  record Found(double rollDeg, double plusMinusDeg, int linesUsed) implements UprightEstimate {
    @Override
    public <T> T fold(Function<Found, T> found, Function<Unsure, T> unsure) {
      return found.apply(this);
    }
  }

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
