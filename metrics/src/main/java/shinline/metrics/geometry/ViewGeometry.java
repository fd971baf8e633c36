package shinline.metrics.geometry;

/**
 * What a camera that is not square to the athlete's side plane makes of it, and the way back: a
 * plane is seen through a pinhole by a homography, here K·R·K⁻¹ but for a shift and a scale
 * (Hartley and Zisserman, <i>Multiple View Geometry</i>, 2nd ed., section 8.4).
 *
 * <p>From far away ({@link Lens#FAR}) a point (x, y) of the side plane is turned about the vertical
 * by the yaw, then about the camera's horizontal by the pitch, then in the picture by the roll:
 *
 * <pre>
 *   u = x cos(yaw)      v = y cos(pitch) − x sin(yaw) sin(pitch)      then (u, v) turned by roll
 * </pre>
 *
 * So with yaw alone tan(θ seen) = tan θ cos(yaw), and with pitch alone tan(θ seen) = tan θ /
 * cos(pitch), for an angle θ against the vertical. Through a real lens uprights also lean the more
 * the farther they are from the lens's centre, by tan(pitch) / focal length for each unit.
 *
 * <p>The centre of the picture stays where it is, and sizes there are as from far away.
 *
 * @param yaw between −60° and 60°; 0 is a true side view, plus when the camera stands ahead of the
 *     athlete
 * @param pitch between −45° and 45°; 0 is a level camera, plus when it looks down
 * @param roll picture turned, plus makes an upright line lean forward (+x); within ±45°
 * @param lens the camera's
 */
public record ViewGeometry(Angle yaw, Angle pitch, Angle roll, Lens lens) {

  public static final ViewGeometry SQUARE = new ViewGeometry(Angle.ZERO, Angle.ZERO, Angle.ZERO);

  public ViewGeometry {
    check("yaw", yaw, 60);
    check("pitch", pitch, 45);
    check("roll", roll, 45);
  }

  /** From far away. */
  public ViewGeometry(Angle yaw, Angle pitch, Angle roll) {
    this(yaw, pitch, roll, Lens.FAR);
  }

  private static void check(String name, Angle angle, double mostDeg) {
    if (Math.abs(angle.degrees()) > mostDeg + 1e-9) {
      throw new IllegalArgumentException(
          name + " of " + angle.degrees() + " degrees is more than " + mostDeg);
    }
  }

  /** Where a point of the side plane is seen. */
  public Point seen(Point real) {
    double x = real.x() - lens.centre().x();
    double y = real.y() - lens.centre().y();
    double u;
    double v;
    if (lens.far()) {
      u = x * cos(yaw);
      v = y * cos(pitch) - x * sin(yaw) * sin(pitch);
    } else {
      double unit = lens.focal() * cos(pitch) * cos(yaw);
      // The ray to the point in the plane's axes, then level, then the camera's own axes.
      double right = x / unit - tan(yaw);
      double up = y / unit - tan(pitch) / cos(yaw);
      double away = cos(yaw) - right * sin(yaw);
      double depth = away * cos(pitch) - up * sin(pitch);
      u = lens.focal() * (right * cos(yaw) + sin(yaw)) / depth;
      v = lens.focal() * (up * cos(pitch) + away * sin(pitch)) / depth;
    }
    return new Point(
        lens.centre().x() + u * cos(roll) + v * sin(roll),
        lens.centre().y() + v * cos(roll) - u * sin(roll));
  }

  /** The point of the side plane that is seen at a place; undoes {@link #seen(Point)}. */
  public Point real(Point seen) {
    double fromX = seen.x() - lens.centre().x();
    double fromY = seen.y() - lens.centre().y();
    double u = fromX * cos(roll) - fromY * sin(roll);
    double v = fromY * cos(roll) + fromX * sin(roll);
    double x;
    double y;
    if (lens.far()) {
      x = u / cos(yaw);
      y = (v + x * sin(yaw) * sin(pitch)) / cos(pitch);
    } else {
      double up = v / lens.focal() * cos(pitch) - sin(pitch);
      double away = v / lens.focal() * sin(pitch) + cos(pitch);
      double depth = u / lens.focal() * sin(yaw) + away * cos(yaw);
      double unit = lens.focal() * cos(pitch) * cos(yaw);
      x = unit * ((u / lens.focal() * cos(yaw) - away * sin(yaw)) / depth + tan(yaw));
      y = unit * (up / depth + tan(pitch) / cos(yaw));
    }
    return new Point(lens.centre().x() + x, lens.centre().y() + y);
  }

  /**
   * How steeply the camera looks down on a point of the side plane: tangent of the angle below the
   * horizontal, square to the plane; minus for a point above the lens.
   */
  public double lookDown(Point real) {
    return lens.far()
        ? tan(pitch)
        : tan(pitch) / cos(yaw)
            - (real.y() - lens.centre().y()) / (lens.focal() * cos(pitch) * cos(yaw));
  }

  /** Pixels of the side plane for one pixel of the picture at a place: the root of the areas. */
  public double enlargement(Point seen) {
    double step = 0.5;
    Point at = real(seen);
    Point across = real(seen.plus(step, 0));
    Point up = real(seen.plus(0, step));
    double area =
        (across.x() - at.x()) * (up.y() - at.y()) - (across.y() - at.y()) * (up.x() - at.x());
    return Math.sqrt(Math.abs(area)) / step;
  }

  private static double cos(Angle a) {
    return Math.cos(a.radians());
  }

  private static double tan(Angle a) {
    return Math.tan(a.radians());
  }

  private static double sin(Angle a) {
    return Math.sin(a.radians());
  }
}
