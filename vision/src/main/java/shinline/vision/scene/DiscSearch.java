package shinline.vision.scene;

/**
 * Where a disc is looked for.
 *
 * @param nearX pixels from the left edge of the upright picture
 * @param nearY pixels from the top edge, down
 * @param reachPx the disc's centre lies within this distance of the place
 * @param leastDiameterPx smallest diameter that can be it
 * @param mostDiameterPx largest diameter that can be it
 */
public record DiscSearch(
    double nearX, double nearY, double reachPx, double leastDiameterPx, double mostDiameterPx) {

  /** Share of the athlete's height that a plate can take in the picture. */
  private static final double LEAST_OF_HEIGHT = 0.20;

  private static final double MOST_OF_HEIGHT = 0.60;

  /** Checks the ranges. */
  public DiscSearch {
    if (!(reachPx >= 0 && leastDiameterPx >= 12 && mostDiameterPx > leastDiameterPx)) {
      throw new IllegalArgumentException(
          "need reach >= 0 and 12 <= least < most diameter, got reach "
              + reachPx
              + ", "
              + leastDiameterPx
              + " to "
              + mostDiameterPx
              + " px");
    }
  }

  /**
   * Anywhere about a standing athlete, or one in the split stance.
   *
   * @param athlete the athlete's box in this frame
   * @param standingHeightPx the athlete's standing height in the picture
   */
  public static DiscSearch about(PersonBox athlete, double standingHeightPx) {
    return new DiscSearch(
        athlete.left() + athlete.width() / 2,
        athlete.top() + athlete.height() / 2,
        1.2 * Math.max(athlete.width(), athlete.height()),
        Math.max(12, LEAST_OF_HEIGHT * standingHeightPx),
        Math.max(24, MOST_OF_HEIGHT * standingHeightPx));
  }
}
