package shinline.vision.pose;

/**
 * Another way to look at a person: a square that is not turned with the body, around the hips.
 *
 * <p>The region that is led from frame to frame turns upside down with a pose that is upside down,
 * and then keeps it so. A square that stands upright cannot. On clips with a bar no look of the
 * first two was off by more than a hand's breadth where the led region was in every fourth to all;
 * on clips without one, the larger square mixes the legs more often than the smaller, so the
 * smaller comes first.
 */
enum SecondLook {
  CLOSE(1.05, ImageFlip.AS_FILMED),
  CLOSE_MIRRORED(1.05, ImageFlip.MIRRORED),
  WIDE(1.35, ImageFlip.AS_FILMED),
  MIDDLE_MIRRORED(1.2, ImageFlip.MIRRORED);

  /** A square reaches this much farther than the circle from which a region is made. */
  private static final double CIRCLES_PER_SIDE = 2.5;

  private final double ofStature;
  private final ImageFlip handedness;

  SecondLook(double ofStature, ImageFlip handedness) {
    this.ofStature = ofStature;
    this.handedness = handedness;
  }

  ImageFlip handedness() {
    return handedness;
  }

  /**
   * The circle from which {@link BodyCircle#region} makes the square.
   *
   * @param hipX column of mid-hip
   * @param hipY row of mid-hip
   * @param staturePx standing height
   */
  BodyCircle circle(double hipX, double hipY, double staturePx) {
    return new BodyCircle(hipX, hipY, hipX, hipY - ofStature * staturePx / CIRCLES_PER_SIDE);
  }
}
