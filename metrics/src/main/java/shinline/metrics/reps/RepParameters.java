package shinline.metrics.reps;

/**
 * Parameters of the rep finder; each fraction lies between 0 and 1.
 *
 * @param level part of the travel that separates the phases; default 0.05 (definition of the
 *     phases, docs/measures.md)
 * @param leastOfLargest least travel of a rep as a part of the clip's largest; default 0.25, so
 *     that short-range reps of one set count together but a wobble beside full reps does not (own
 *     choice)
 * @param leastOfLeg least travel of a rep as a part of the leg length; default 0.08, about 7 cm:
 *     the hip of a walker bobs 4 to 5 cm (own choice)
 * @param restRange how much of the travel the hip may move while it counts as resting; default
 *     0.03, less than {@code level} so that resting never crosses a phase edge (own choice)
 * @param restS shortest rest that can be a top, seconds; default 0.25 (own choice)
 * @param sameLevel how far apart, as a part of the travel, the rests before and after a rep may be
 *     and still be the same stance; default 0.05 (own choice)
 * @param nearLowest samples at most this part of the travel above the lowest one tell the level of
 *     the bottom; default 0.06, a little more than {@code level}
 * @param lowestShare which of their quantiles is that level; default 0.1: of a hold of a second it
 *     leaves the lowest tenth below, of a touch it is the lowest sample (set on clips with truth,
 *     whose holds came out a twentieth of a second short with the lowest sample)
 */
public record RepParameters(
    double level,
    double leastOfLargest,
    double leastOfLeg,
    double restRange,
    double restS,
    double sameLevel,
    double nearLowest,
    double lowestShare) {

  public static final RepParameters DEFAULT =
      new RepParameters(0.05, 0.25, 0.08, 0.03, 0.25, 0.05, 0.06, 0.1);

  public RepParameters {
    boolean good =
        level > 0
            && level < 0.5
            && leastOfLargest > 0
            && leastOfLargest < 1
            && leastOfLeg > 0
            && leastOfLeg < 1
            && restRange > 0
            && restRange <= level
            && restS > 0
            && restS < 5
            && sameLevel > 0
            && sameLevel < 0.5
            && nearLowest >= level
            && nearLowest < 0.5
            && lowestShare > 0
            && lowestShare <= 1;
    if (!good) {
      throw new IllegalArgumentException(
          "level "
              + level
              + ", least of largest "
              + leastOfLargest
              + ", least of leg "
              + leastOfLeg
              + ", rest range "
              + restRange
              + ", rest "
              + restS
              + " s, same level "
              + sameLevel
              + ", near the lowest "
              + nearLowest
              + ", share of the lowest "
              + lowestShare);
    }
  }
}
