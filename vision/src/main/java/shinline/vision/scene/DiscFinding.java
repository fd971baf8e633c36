package shinline.vision.scene;

/** The answer of {@link DiscFinder}. */
public sealed interface DiscFinding {

  /**
   * A disc was found.
   *
   * @param centreX pixels from the left edge
   * @param centreY pixels from the top edge, down
   * @param diameterPx its diameter; of a disc turned off face-on, which shows as an ellipse, the
   *     longer axis, since turning shortens only the other one
   * @param plusMinusPx half width of the 95 % interval of the diameter, pixels
   * @param roundness shorter over longer axis, 0…1
   */
  record Found(
      double centreX, double centreY, double diameterPx, double plusMinusPx, double roundness)
      implements DiscFinding {}

  /** No disc can be read honestly. */
  record NotFound(NoDisc reason) implements DiscFinding {}
}
