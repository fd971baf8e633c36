package shinline.vision.pose;

/** An upright rectangle of the frame, pixels, y down. */
public record Patch(double left, double top, double right, double bottom) {

  /** The smallest one around some landmarks. */
  public static Patch around(PoseSighting.Found found, Iterable<BodyLandmark> landmarks) {
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (BodyLandmark landmark : landmarks) {
      Keypoint point = found.at(landmark);
      left = Math.min(left, point.x());
      right = Math.max(right, point.x());
      top = Math.min(top, point.y());
      bottom = Math.max(bottom, point.y());
    }
    return new Patch(left, top, right, bottom);
  }

  /** With a margin on every side. */
  Patch grown(double marginPx) {
    return new Patch(left - marginPx, top - marginPx, right + marginPx, bottom + marginPx);
  }
}
