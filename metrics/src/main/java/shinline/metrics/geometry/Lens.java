package shinline.metrics.geometry;

/**
 * What a camera is, apart from where it stands: a pinhole with square pixels (Hartley and
 * Zisserman, <i>Multiple View Geometry</i>, 2nd ed., section 6.1).
 *
 * @param centre where the line of sight meets the picture, same axes and unit as the points
 * @param focal focal length in the points' unit, above 0; infinite for a camera so far away that
 *     nearness changes nothing
 */
public record Lens(Point centre, double focal) {

  /** Parallel projection. */
  public static final Lens FAR = new Lens(new Point(0, 0), Double.POSITIVE_INFINITY);

  public Lens {
    if (!(focal > 0)) {
      throw new IllegalArgumentException("focal length " + focal);
    }
  }

  /** Whether the projection is a parallel one. */
  public boolean far() {
    return Double.isInfinite(focal);
  }
}
