package shinline.vision.scene;

/**
 * Settings of {@link BackgroundRoll}. Lengths are shares of the picture's longer side, so that they
 * hold at any resolution. Chosen on the development clips, turned by known angles.
 *
 * @param workLongSidePx the picture is shrunk to this longer side before lines are sought; 960
 * @param minLineShare shortest line that counts; 0.035
 * @param maxRollDeg largest roll looked for; 15
 * @param leanRangeDeg a line further than this from the picture's axes is no evidence; 24, the
 *     largest roll and the convergence of verticals under a pitch of 10°
 * @param sightingsShare share of the frames in which a line must be seen at its place; 0.6
 * @param sightingsShareAtAthlete the same for a line in the athlete's box; 0.8
 * @param fewestSightingsAtAthlete a line in the athlete's box must be seen in at least this many
 *     frames; 4
 * @param matchLeanDeg two sightings of one line differ by at most this; 1.0
 * @param matchOffsetShare two sightings of one line lie at most this far apart; 0.006
 * @param athleteMarginShare the athlete's box is grown by this share of its height; 0.04
 * @param minVerticalShare total length of agreeing near-vertical lines that is enough alone; 0.3
 * @param minHorizontalShare total length of agreeing near-horizontal lines that is enough alone;
 *     1.2. Shares of both add up: half of each is enough too.
 * @param rivalShare another roll with more than this share of the best one's support makes the
 *     answer unsure; 0.75
 * @param floorDeg standard deviation that is added to every answer, for what the fit cannot see
 *     (lens, a building not quite square); 0.15
 * @param maxPlusMinusDeg a wider answer than this is no answer; 3
 * @param minFamilyLines fewest agreeing lines that tell how their kind converges; 3
 * @param minFamilySpread their outermost are at least this far apart; 0.2
 * @param minFamilyAgreement share of the length of all lines of that kind that must agree; 0.5
 * @param floorConvergence standard deviation added to every convergence, radians a longer side;
 *     0.012, half a degree of pitch
 */
public record BackgroundRollParameters(
    int workLongSidePx,
    double minLineShare,
    double maxRollDeg,
    double leanRangeDeg,
    double sightingsShare,
    double sightingsShareAtAthlete,
    int fewestSightingsAtAthlete,
    double matchLeanDeg,
    double matchOffsetShare,
    double athleteMarginShare,
    double minVerticalShare,
    double minHorizontalShare,
    double rivalShare,
    double floorDeg,
    double maxPlusMinusDeg,
    int minFamilyLines,
    double minFamilySpread,
    double minFamilyAgreement,
    double floorConvergence) {

  /** Checks the ranges. */
  public BackgroundRollParameters {
    if (workLongSidePx < 200) {
      throw new IllegalArgumentException("workLongSidePx must be at least 200: " + workLongSidePx);
    }
    if (!(maxRollDeg > 0 && leanRangeDeg > maxRollDeg && leanRangeDeg < 45)) {
      throw new IllegalArgumentException(
          "need 0 < maxRollDeg < leanRangeDeg < 45, got " + maxRollDeg + " and " + leanRangeDeg);
    }
    if (!(sightingsShare > 0 && sightingsShare <= 1)) {
      throw new IllegalArgumentException("sightingsShare must be in (0, 1]: " + sightingsShare);
    }
  }

  /** The documented defaults. */
  public static BackgroundRollParameters defaults() {
    return new BackgroundRollParameters(
        960, 0.035, 15, 24, 0.6, 0.8, 4, 1.0, 0.006, 0.04, 0.3, 1.2, 0.75, 0.15, 3, 3, 0.2, 0.5,
        0.012);
  }
}
