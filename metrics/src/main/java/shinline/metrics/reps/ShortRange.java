package shinline.metrics.reps;

/**
 * What makes a rep a short-range drive: the hip moves little and does not linger. The figures are
 * our own choice, below any full rep of the development clips.
 */
public final class ShortRange {
  /** The hip travels less than this, as a share of stature. */
  private static final double TRAVEL = 0.14;

  private static final double LOWERING_S = 0.8;
  private static final double DRIVE_S = 0.6;

  private ShortRange() {}

  /**
   * @param travelOfStature how far the hip comes down, as a share of the athlete's height
   */
  public static boolean is(double travelOfStature, double loweringS, double driveS) {
    return travelOfStature < TRAVEL && loweringS <= LOWERING_S && driveS <= DRIVE_S;
  }
}
