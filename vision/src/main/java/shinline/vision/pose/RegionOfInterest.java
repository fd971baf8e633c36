package shinline.vision.pose;

/**
 * The rotated square of the frame that the landmark model looks at.
 *
 * @param centreX pixels of the upright frame, pixel centres at whole numbers
 * @param centreY pixels of the upright frame, down
 * @param sizePx side of the square, pixels of the frame
 * @param rotationRad clockwise turn of the square as seen in the picture, radians in [−π, π)
 */
public record RegionOfInterest(double centreX, double centreY, double sizePx, double rotationRad) {

  /** The square reaches this much further than the circle around the body. */
  private static final double MARGIN = 1.25;

  public RegionOfInterest {
    if (!(sizePx > 0) || !Double.isFinite(centreX + centreY + sizePx + rotationRad)) {
      throw new IllegalArgumentException(
          "A region needs a finite centre and a size above 0, not size " + sizePx);
    }
  }

  /**
   * The region around a body, as the model was trained: its centre is the mid-hip, the scale point
   * lies above it on the circle that just holds the whole body.
   */
  static RegionOfInterest around(double hipX, double hipY, double scaleX, double scaleY) {
    double dx = scaleX - hipX;
    double dy = scaleY - hipY;
    double turn = Math.PI / 2 - Math.atan2(-dy, dx);
    double size = Math.max(1, 2 * Math.hypot(dx, dy) * MARGIN);
    return new RegionOfInterest(hipX, hipY, size, normalised(turn));
  }

  /** Of the circle from which {@link #around} makes such a square, pixels of the frame. */
  double circleRadiusPx() {
    return sizePx / (2 * MARGIN);
  }

  /** The upright square around a whole frame: its shorter side lies centred in the square. */
  static RegionOfInterest letterbox(int widthPx, int heightPx) {
    return new RegionOfInterest(
        (widthPx - 1) / 2.0, (heightPx - 1) / 2.0, Math.max(widthPx, heightPx), 0);
  }

  /**
   * On the way from one region to another.
   *
   * @param share of the way, 0…1
   */
  static RegionOfInterest between(RegionOfInterest from, RegionOfInterest to, double share) {
    return new RegionOfInterest(
        from.centreX() + share * (to.centreX() - from.centreX()),
        from.centreY() + share * (to.centreY() - from.centreY()),
        from.sizePx() + share * (to.sizePx() - from.sizePx()),
        normalised(from.rotationRad() + share * normalised(to.rotationRad() - from.rotationRad())));
  }

  /** The same square, farther on by a share of the way it came from another. */
  RegionOfInterest movedOn(RegionOfInterest from, double share) {
    return new RegionOfInterest(
        centreX + share * (centreX - from.centreX()),
        centreY + share * (centreY - from.centreY()),
        sizePx,
        rotationRad);
  }

  private static double normalised(double angle) {
    return angle - 2 * Math.PI * Math.floor((angle + Math.PI) / (2 * Math.PI));
  }

  /**
   * Frame column of a point of the region.
   *
   * @param u 0 at the region's left edge, 1 at its right
   * @param v 0 at its top, 1 at its bottom
   */
  public double frameX(double u, double v) {
    return centreX
        + sizePx * ((u - 0.5) * Math.cos(rotationRad) - (v - 0.5) * Math.sin(rotationRad));
  }

  /** Frame row of a point of the region; see {@link #frameX}. */
  public double frameY(double u, double v) {
    return centreY
        + sizePx * ((u - 0.5) * Math.sin(rotationRad) + (v - 0.5) * Math.cos(rotationRad));
  }

  /** Place across the region, 0…1 inside it, of a point of the frame. */
  public double regionU(double frameX, double frameY) {
    double dx = frameX - centreX;
    double dy = frameY - centreY;
    return 0.5 + (dx * Math.cos(rotationRad) + dy * Math.sin(rotationRad)) / sizePx;
  }

  /** Place down the region, 0…1 inside it, of a point of the frame. */
  public double regionV(double frameX, double frameY) {
    double dx = frameX - centreX;
    double dy = frameY - centreY;
    return 0.5 + (dy * Math.cos(rotationRad) - dx * Math.sin(rotationRad)) / sizePx;
  }
}
