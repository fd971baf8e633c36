package shinline.metrics.view;

import java.util.Optional;

/**
 * What the straight lines of the room tell of the camera.
 *
 * @param rollDeg turn of the picture, + clockwise
 * @param rollSigmaDeg its standard deviation
 * @param uprights how the uprights converge; empty when that cannot be told. Plus when a line to
 *     the right of the centre leans to the right at its top, so when the camera looks down
 * @param levels the same of the level lines along a wall. Plus when they rise to the right below
 *     the horizon, so when the wall's right end is the farther one
 */
public record RoomSight(
    double rollDeg, double rollSigmaDeg, Optional<Slope> uprights, Optional<Slope> levels) {

  /** A half width of 95 % in standard deviations. */
  public static final double NINETY_FIVE = 1.96;

  /**
   * Tangent of the camera's angle to a family of parallel lines over the focal length.
   *
   * @param perLongSide focal length in longer sides of the picture
   * @param sigma standard deviation
   */
  public record Slope(double perLongSide, double sigma) {
    /** The angle, for a focal length in longer sides. */
    AngleEstimate angle(double focalLongSides) {
      double tangent = focalLongSides * perLongSide;
      return new AngleEstimate(
          Math.toDegrees(Math.atan(tangent)),
          Math.toDegrees(focalLongSides * sigma / (1 + tangent * tangent)));
    }
  }
}
