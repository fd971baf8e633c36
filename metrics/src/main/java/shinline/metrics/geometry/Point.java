package shinline.metrics.geometry;

/**
 * A place in the athlete's side plane: x towards where the athlete faces, y up (the axes of Wu et
 * al. 2002, J Biomech 35:543–548). Metres, centimetres or pixels, as long as one unit is kept.
 */
public record Point(double x, double y) {
  public Point {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("point " + x + ", " + y);
    }
  }

  public Point plus(double dx, double dy) {
    return new Point(x + dx, y + dy);
  }

  public Point times(double factor) {
    return new Point(x * factor, y * factor);
  }

  public double distanceTo(Point other) {
    return Math.hypot(other.x - x, other.y - y);
  }

  /** The point half way to another. */
  public Point middle(Point other) {
    return new Point((x + other.x) / 2, (y + other.y) / 2);
  }
}
