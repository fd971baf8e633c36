package shinline.metrics.plausibility;

/**
 * What an angle can be, degrees.
 *
 * @param leastDeg lowest value that can be
 * @param mostDeg highest value that can be
 */
public record Range(double leastDeg, double mostDeg) {
  public Range {
    if (!(leastDeg < mostDeg)) {
      throw new IllegalArgumentException("from " + leastDeg + " to " + mostDeg + " deg");
    }
  }

  /** Whether a value lies inside, or outside by no more than a slack. */
  public boolean holds(double deg, double slackDeg) {
    return deg >= leastDeg - slackDeg && deg <= mostDeg + slackDeg;
  }
}
