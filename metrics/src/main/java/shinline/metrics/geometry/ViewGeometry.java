package shinline.metrics.geometry;

/**
 * What a camera that is not square to the athlete's side plane makes of it, and the way back. The
 * camera is taken as far away (orthographic); for nearness see {@link #perspectiveScale}.
 *
 * <p>A point (x, y) of the side plane is first turned about the vertical by the yaw, then about the
 * camera's horizontal by the pitch, then in the picture by the roll:
 *
 * <pre>
 *   u = x cos(yaw)      v = y cos(pitch) + x sin(yaw) sin(pitch)      then (u, v) turned by roll
 * </pre>
 *
 * So with yaw alone tan(θ seen) = tan θ cos(yaw), and with pitch alone tan(θ seen) = tan θ /
 * cos(pitch), for an angle θ against the vertical.
 *
 * @param yaw between −60° and 60°; 0 is a true side view
 * @param pitch between −45° and 45°; 0 is a level camera
 * @param roll picture turned, plus makes an upright line lean forward (+x); within ±45°
 */
public record ViewGeometry(Angle yaw, Angle pitch, Angle roll) {

  public static final ViewGeometry SQUARE = new ViewGeometry(Angle.ZERO, Angle.ZERO, Angle.ZERO);

  public ViewGeometry {
    check("yaw", yaw, 60);
    check("pitch", pitch, 45);
    check("roll", roll, 45);
  }

  private static void check(String name, Angle angle, double mostDeg) {
    if (Math.abs(angle.degrees()) > mostDeg + 1e-9) {
      throw new IllegalArgumentException(
          name + " of " + angle.degrees() + " degrees is more than " + mostDeg);
    }
  }

  public static ViewGeometry ofYaw(Angle yaw) {
    return new ViewGeometry(yaw, Angle.ZERO, Angle.ZERO);
  }

  public static ViewGeometry ofPitch(Angle pitch) {
    return new ViewGeometry(Angle.ZERO, pitch, Angle.ZERO);
  }

  public static ViewGeometry ofRoll(Angle roll) {
    return new ViewGeometry(Angle.ZERO, Angle.ZERO, roll);
  }

  /** Where a point of the side plane is seen, from the same origin. */
  public Point seen(Point real) {
    double u = real.x() * cos(yaw);
    double v = real.y() * cos(pitch) + real.x() * sin(yaw) * sin(pitch);
    return new Point(u * cos(roll) + v * sin(roll), v * cos(roll) - u * sin(roll));
  }

  /** The point of the side plane that is seen at a place; undoes {@link #seen(Point)}. */
  public Point real(Point seen) {
    double u = seen.x() * cos(roll) - seen.y() * sin(roll);
    double v = seen.y() * cos(roll) + seen.x() * sin(roll);
    double x = u / cos(yaw);
    return new Point(x, (v - x * sin(yaw) * sin(pitch)) / cos(pitch));
  }

  /** How an angle against the vertical (plus forward) looks. */
  public Angle seenFromVertical(Angle real) {
    Point tip = seen(new Point(Math.sin(real.radians()), Math.cos(real.radians())));
    return new Angle(Math.atan2(tip.x(), tip.y()));
  }

  /** The angle against the vertical behind one that was seen. */
  public Angle realFromVertical(Angle seen) {
    Point tip = real(new Point(Math.sin(seen.radians()), Math.cos(seen.radians())));
    return new Angle(Math.atan2(tip.x(), tip.y()));
  }

  /** A horizontal distance of the side plane as seen under the yaw alone: times cos(yaw). */
  public double seenHorizontal(double real) {
    return real * cos(yaw);
  }

  /** The horizontal distance of the side plane behind one that was seen under the yaw alone. */
  public double realHorizontal(double seen) {
    return seen / cos(yaw);
  }

  /**
   * How much larger something looks that is nearer to the camera than the plane the scale was taken
   * in: D / (D − dz).
   *
   * @param distance camera to plane, above 0
   * @param nearer how much nearer, less than the distance; minus for further away; same unit
   */
  public static double perspectiveScale(double distance, double nearer) {
    if (!(distance > 0) || !(nearer < distance)) {
      throw new IllegalArgumentException("distance " + distance + ", nearer by " + nearer);
    }
    return distance / (distance - nearer);
  }

  /**
   * Standard deviation of a segment's angle from that of its ends: √2 σ / L, for small errors that
   * do not depend on one another.
   *
   * @param endSigma standard deviation of either end in one direction, 0 or more
   * @param length length of the segment in the same unit, above 0
   */
  public static Angle angleSigma(double endSigma, double length) {
    if (!(endSigma >= 0) || !(length > 0)) {
      throw new IllegalArgumentException("sigma " + endSigma + " on a length of " + length);
    }
    return new Angle(Math.sqrt(2) * endSigma / length);
  }

  private static double cos(Angle a) {
    return Math.cos(a.radians());
  }

  private static double sin(Angle a) {
    return Math.sin(a.radians());
  }
}
