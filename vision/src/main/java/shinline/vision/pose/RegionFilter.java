package shinline.vision.pose;

/** Steadies the two auxiliary points from which the next frame's region comes. */
final class RegionFilter {
  /** The model's own settings for its auxiliary points. */
  private static final double MIN_CUTOFF_HZ = 0.01;

  private static final double BETA = 10;
  private static final double DERIVATIVE_CUTOFF_HZ = 1;

  private final OneEuroFilter hipX = filter();
  private final OneEuroFilter hipY = filter();
  private final OneEuroFilter scaleX = filter();
  private final OneEuroFilter scaleY = filter();

  private static OneEuroFilter filter() {
    return new OneEuroFilter(MIN_CUTOFF_HZ, BETA, DERIVATIVE_CUTOFF_HZ);
  }

  /** The region around the filtered points. */
  RegionOfInterest next(BodyCircle circle, double timeS) {
    double speedScale = 1 / Math.max(1, 2 * circle.radius());
    return RegionOfInterest.around(
        hipX.next(circle.hipX(), speedScale, timeS),
        hipY.next(circle.hipY(), speedScale, timeS),
        scaleX.next(circle.scaleX(), speedScale, timeS),
        scaleY.next(circle.scaleY(), speedScale, timeS));
  }
}
