package shinline.metrics.reps;

/** Parameters of the rep finder; each fraction lies between 0 and 1. */
final class RepParameters {
  /** Part of the travel that separates the phases (definition of the phases, docs/measures.md). */
  static final double LEVEL = 0.05;

  /**
   * Least travel of a rep as a part of the clip's largest, so that short-range reps of one set
   * count together but a wobble beside full reps does not (own choice).
   */
  static final double LEAST_OF_LARGEST = 0.25;

  /**
   * Least travel of a rep as a part of the leg length: about 7 cm; the hip of a walker bobs 4 to 5
   * cm (own choice).
   */
  static final double LEAST_OF_LEG = 0.08;

  /**
   * How much of the travel the hip may move while it counts as resting: less than {@link #LEVEL} so
   * that resting never crosses a phase edge (own choice).
   */
  static final double REST_RANGE = 0.03;

  /** Shortest rest that can be a top, seconds (own choice). */
  static final double REST_S = 0.25;

  /**
   * How far apart, as a part of the travel, the rests before and after a rep may be and still be
   * the same stance (own choice).
   */
  static final double SAME_LEVEL = 0.05;

  /**
   * Samples at most this part of the travel above the lowest one tell the level of the bottom,
   * those as far below the highest that of a top: a little more than {@link #LEVEL}.
   */
  static final double NEAR_EXTREME = 0.06;

  /**
   * Which of their quantiles is that level: of a hold of a second it leaves the lowest tenth below,
   * of a touch it is the lowest sample (set on clips with truth, whose holds came out a twentieth
   * of a second short with the lowest sample); a top leaves the highest tenth above in the same
   * way.
   */
  static final double BEYOND_LEVEL = 0.1;

  private RepParameters() {}
}
