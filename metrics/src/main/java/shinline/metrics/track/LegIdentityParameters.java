package shinline.metrics.track;

/**
 * How the legs are told apart. Lengths are shares of the athlete's stature in the picture. Our own
 * choices, checked on clips with truth.
 *
 * @param leastConfidence a point the model trusts less than this counts as not seen
 * @param apart two candidates for a joint closer than this are on one and the same leg
 * @param splitApart feet at least this far apart are in a split stance
 * @param offPlant a foot point farther than this from where the foot is planted is no sighting of
 *     it
 * @param lengthSpread spread of a shank's length from frame to frame
 * @param leastSplit share of the frames that must show a split stance
 */
public record LegIdentityParameters(
    double leastConfidence,
    double apart,
    double splitApart,
    double offPlant,
    double offRearPlant,
    double offLength,
    double lengthSpread,
    double leastSplit) {
  public static final LegIdentityParameters DEFAULT =
      new LegIdentityParameters(0.1, 0.05, 0.18, 0.07, 0.12, 0.035, 0.025, 0.3);

  public LegIdentityParameters {
    if (!(leastConfidence >= 0 && apart > 0 && splitApart > apart && offPlant > 0)
        || !(offRearPlant > 0 && offLength > 0)
        || !(lengthSpread > 0 && leastSplit > 0 && leastSplit <= 1)) {
      throw new IllegalArgumentException("leg identity parameters out of range");
    }
  }
}
