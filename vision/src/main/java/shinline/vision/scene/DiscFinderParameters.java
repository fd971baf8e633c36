package shinline.vision.scene;

/**
 * Settings of {@link DiscFinder}.
 *
 * @param candidates circles looked at closely, the surest first; 60, as a gym is full of round
 *     things, and a close look is cheap
 * @param rays directions in which the rim is sought; 180
 * @param leastRimShare share of the rays that must meet the rim for an answer; 0.55
 * @param rimScatterShare standard deviation about the fitted rim, as a share of the radius, beyond
 *     which it is no disc; 0.012
 * @param leastRoundness a shorter over longer axis below this is a disc turned too far, about 32°;
 *     0.85
 * @param leastContrast weakest step across the rim that counts, grey levels; 10
 */
public record DiscFinderParameters(
    int candidates,
    int rays,
    double leastRimShare,
    double rimScatterShare,
    double leastRoundness,
    double leastContrast) {

  /** Checks the ranges. */
  public DiscFinderParameters {
    if (candidates < 1 || rays < 36) {
      throw new IllegalArgumentException(
          "need at least 1 candidate and 36 rays, got " + candidates + " and " + rays);
    }
    if (!(leastRimShare > 0 && leastRimShare <= 1 && leastRoundness > 0 && leastRoundness <= 1)) {
      throw new IllegalArgumentException("shares must be in (0, 1]");
    }
  }

  /** The documented defaults. */
  public static DiscFinderParameters defaults() {
    return new DiscFinderParameters(60, 180, 0.55, 0.012, 0.85, 10);
  }

  /**
   * For a disc that is looked for again and again: the surest circles only, and less of the rim,
   * since a head, an arm or the bar's other disc is behind it; rounder, since two discs one before
   * the other look like one that is turned. A bar 20° off the side still has 0.94.
   */
  public static DiscFinderParameters forFollowing() {
    return new DiscFinderParameters(40, 120, 0.5, 0.015, 0.92, 8);
  }
}
