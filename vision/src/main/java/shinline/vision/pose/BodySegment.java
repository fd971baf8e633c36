package shinline.vision.pose;

/**
 * A segment of the body that a side view shows at its full length.
 *
 * @see OwnLengths
 */
enum BodySegment {
  /** Mid-hip to mid-shoulder. */
  TRUNK(0.30),
  /** Hip to knee, either leg. */
  THIGH(0.225),
  /** Knee to ankle, either leg. */
  SHANK(0.25);

  private final double ofStature;

  BodySegment(double ofStature) {
    this.ofStature = ofStature;
  }

  /**
   * Length between the model's own landmarks as a share of the standing height: medians over two
   * computer-made athletes.
   */
  double ofStature() {
    return ofStature;
  }
}
