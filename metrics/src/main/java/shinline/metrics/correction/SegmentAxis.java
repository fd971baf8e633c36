package shinline.metrics.correction;

import shinline.metrics.correction.CorrectionTable.Offset;
import shinline.metrics.geometry.Point;

/** Unit vector up a segment: the frame in which an offset is told. */
record SegmentAxis(double x, double y) {

  /** Straight up. */
  static final SegmentAxis PICTURE = new SegmentAxis(0, 1);

  static SegmentAxis from(Point lower, Point upper) {
    double length = Math.max(1e-9, lower.distanceTo(upper));
    return new SegmentAxis((upper.x() - lower.x()) / length, (upper.y() - lower.y()) / length);
  }

  /** Angle of this segment above another one below it, + bent forward, radians. */
  double bend(SegmentAxis below) {
    return Math.atan2(x, y) - Math.atan2(below.x, below.y);
  }

  /** An offset of this frame in the picture. Ahead of a segment that points up is (y, -x). */
  Point way(Offset offset) {
    return new Point(
        offset.along() * x + offset.ahead() * y, offset.along() * y - offset.ahead() * x);
  }

  /** The offset of this frame that a way in the picture is; undoes {@link #way}. */
  Offset offset(double dx, double dy) {
    return new Offset(dx * x + dy * y, dx * y - dy * x);
  }
}
