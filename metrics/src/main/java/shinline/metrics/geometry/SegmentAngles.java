package shinline.metrics.geometry;

/**
 * Angles of the body's segments in the side plane, facing +x, up +y. They change neither with scale
 * nor with place. Points that coincide have no direction and are refused.
 *
 * <ol>
 *   <li>D. A. Winter, <i>Biomechanics and Motor Control of Human Movement</i>, 4th ed., Wiley 2009:
 *       segment angle, counter-clockwise from the right horizontal at the distal end; knee angle =
 *       thigh angle − leg angle.
 * </ol>
 */
public final class SegmentAngles {

  private static final Angle RIGHT = new Angle(Math.PI / 2);

  private SegmentAngles() {}

  /**
   * Winter's segment angle, in (-180°, 180°].
   *
   * @throws IllegalArgumentException if the ends coincide
   */
  public static Angle segment(Point distal, Point proximal) {
    double dx = proximal.x() - distal.x();
    double dy = proximal.y() - distal.y();
    if (dx == 0 && dy == 0) {
      throw new IllegalArgumentException("both ends of the segment are at " + distal);
    }
    return new Angle(Math.atan2(dy, dx)).wrapped();
  }

  /** Shin against the vertical: 0 vertical, plus when the knee is ahead of the ankle. */
  public static Angle shinForward(Point ankle, Point knee) {
    return RIGHT.minus(segment(ankle, knee)).wrapped();
  }

  /** Trunk against the vertical: 0 upright, plus when the shoulders are ahead of the hips. */
  public static Angle trunkLean(Point midHip, Point midShoulder) {
    return RIGHT.minus(segment(midHip, midShoulder)).wrapped();
  }

  /**
   * Thigh against the horizontal: 0 parallel, plus when the hip is above the knee, 90° upright,
   * more when the hip is ahead of the knee.
   */
  public static Angle thighFromHorizontal(Point knee, Point hip) {
    return new Angle(Math.PI).minus(segment(knee, hip)).wrapped();
  }

  /** Knee flexion: 0 straight, plus when bent, minus when over-stretched. */
  public static Angle kneeFlexion(Point hip, Point knee, Point ankle) {
    return segment(knee, hip).minus(segment(ankle, knee)).wrapped();
  }

  /** Hip flexion, thigh against trunk: 0 straight, plus when bent, minus when extended. */
  public static Angle hipFlexion(Point midShoulder, Point hip, Point knee) {
    return hipFlexion(segment(knee, hip), segment(hip, midShoulder));
  }

  /**
   * Hip flexion from the two segment angles, for a trunk line that starts at mid-hip and a thigh
   * that starts at the front hip.
   */
  public static Angle hipFlexion(Angle thighSegment, Angle trunkSegment) {
    return thighSegment.minus(trunkSegment).wrapped();
  }

  /**
   * Standard deviation of a segment's angle from that of its ends: √2 σ / L, for small errors that
   * do not depend on one another.
   *
   * @param endSigma standard deviation of either end in one direction, 0 or more
   * @param length length of the segment in the same unit, above 0
   */
  public static Angle sigma(double endSigma, double length) {
    if (!(endSigma >= 0) || !(length > 0)) {
      throw new IllegalArgumentException("sigma " + endSigma + " on a length of " + length);
    }
    return new Angle(Math.sqrt(2) * endSigma / length);
  }

  /** How far the knee is ahead of the toe tip along the facing direction, in the points' unit. */
  public static double kneePastToe(Point knee, Point toe) {
    return knee.x() - toe.x();
  }
}
