package shinline.metrics.reps;

/**
 * Instants of a rep by the five per cent rule, seconds of the clip.
 *
 * @param startS lowering starts: last instant within 5 % of travel from the top before the descent
 * @param bottomStartS hold starts: first instant within 5 % of travel from the lowest
 * @param lowestS the lowest sample
 * @param bottomEndS hold ends: last instant within 5 % of travel from the lowest
 * @param endS drive ends: first instant within 5 % of the top that follows
 */
public record RepTimes(
    double startS, double bottomStartS, double lowestS, double bottomEndS, double endS) {
  public RepTimes {
    boolean ordered =
        startS <= bottomStartS
            && bottomStartS <= lowestS
            && lowestS <= bottomEndS
            && bottomEndS <= endS;
    if (!ordered) {
      throw new IllegalArgumentException(
          "not in order: "
              + startS
              + ", "
              + bottomStartS
              + ", "
              + lowestS
              + ", "
              + bottomEndS
              + ", "
              + endS);
    }
  }

  /** Middle of the hold, seconds. */
  public double bottomS() {
    return (bottomStartS + bottomEndS) / 2;
  }

  /**
   * An instant of the drive.
   *
   * @param share of the drive's time that has passed, 0…1
   */
  public double intoDrive(double share) {
    return bottomEndS + share * (endS - bottomEndS);
  }
}
