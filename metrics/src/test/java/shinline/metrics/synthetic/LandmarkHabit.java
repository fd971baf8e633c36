package shinline.metrics.synthetic;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import shinline.metrics.geometry.Point;
import shinline.metrics.track.BodyPoint;

/**
 * Where the pose model puts its landmarks on a body whose joint centres are known.
 *
 * <p>The figures tell how far a joint centre lies from its landmark, up a segment and ahead of it,
 * in shares of trunk, thigh and shank between landmarks. They are copied by hand from the fit of
 * docs/decisions/0006-joint-centres.md over seven clips with truth, as it stood in November 2026.
 * They are not read from the calibration, and nothing here calls what takes them out again: when
 * either changes, the tests ask for a look.
 */
final class LandmarkHabit {
  private record Off(double along, double ahead) {}

  /** In the frame of the trunk (eleven clips, as is the next one). */
  private static final Off MID_HIP = new Off(0.01263, -0.01951);

  /** More on the middle of the hips for each radian that the hip is bent. */
  private static final Off MID_HIP_BEND = new Off(-0.01442, 0);

  private static final Off MID_SHOULDER = new Off(-0.03308, 0.00612);
  private static final Off FRONT_HIP = new Off(0.01734, -0.0419);

  /** More on the front hip for each radian that the hip is bent. */
  private static final Off FRONT_HIP_BEND = new Off(-0.02311, 0.00162);

  /** In the frame of the shank. */
  private static final Off FRONT_KNEE = new Off(-0.00854, 0.00309);

  private static final Off FRONT_ANKLE = new Off(-0.02414, 0.00019);

  /** In the frame of the picture. */
  private static final Off FRONT_TOE = new Off(-0.00598, 0.0088);

  private static final Off FRONT_HEEL = new Off(-0.01185, -0.01141);
  private static final Off REAR_KNEE = new Off(-0.01059, -0.00177);

  /** An offset turns its own segment by some hundredths: each round leaves so much of the error. */
  private static final int ROUNDS = 8;

  private LandmarkHabit() {}

  /**
   * The landmarks of a clip.
   *
   * @param centres joint centres of each frame, pixels, x forward, y up
   */
  static List<Map<BodyPoint, Point>> landmarks(List<Map<BodyPoint, Point>> centres) {
    List<Map<BodyPoint, Point>> marks = centres;
    for (int round = 0; round < ROUNDS; round++) {
      double size =
          middle(marks, m -> apart(midHip(m), midShoulder(m)))
              + middle(marks, m -> apart(m.get(BodyPoint.FRONT_HIP), m.get(BodyPoint.FRONT_KNEE)))
              + middle(
                  marks, m -> apart(m.get(BodyPoint.FRONT_KNEE), m.get(BodyPoint.FRONT_ANKLE)));
      List<Map<BodyPoint, Point>> next = new ArrayList<>();
      for (int i = 0; i < centres.size(); i++) {
        next.add(frame(centres.get(i), marks.get(i), size));
      }
      marks = next;
    }
    return marks;
  }

  private static Map<BodyPoint, Point> frame(
      Map<BodyPoint, Point> centre, Map<BodyPoint, Point> mark, double size) {
    double trunk = fromUpright(midHip(mark), midShoulder(mark));
    double thigh = fromUpright(mark.get(BodyPoint.FRONT_KNEE), mark.get(BodyPoint.FRONT_HIP));
    double shank = fromUpright(mark.get(BodyPoint.FRONT_ANKLE), mark.get(BodyPoint.FRONT_KNEE));
    double bend = trunk - thigh;
    Point frontHip = sum(way(FRONT_HIP, trunk), way(FRONT_HIP_BEND, trunk).times(bend));
    Map<BodyPoint, Point> off = new EnumMap<>(BodyPoint.class);
    off.put(BodyPoint.FRONT_HIP, frontHip);
    // The middle of both hips is off by its own figure.
    Point midHip = sum(way(MID_HIP, trunk), way(MID_HIP_BEND, trunk).times(bend));
    off.put(BodyPoint.REAR_HIP, sum(midHip.times(2), frontHip.times(-1)));
    off.put(BodyPoint.NEAR_SHOULDER, way(MID_SHOULDER, trunk));
    off.put(BodyPoint.FAR_SHOULDER, way(MID_SHOULDER, trunk));
    off.put(BodyPoint.FRONT_KNEE, way(FRONT_KNEE, shank));
    off.put(BodyPoint.FRONT_ANKLE, way(FRONT_ANKLE, shank));
    off.put(BodyPoint.FRONT_TOE, way(FRONT_TOE, 0));
    off.put(BodyPoint.FRONT_HEEL, way(FRONT_HEEL, 0));
    off.put(BodyPoint.REAR_KNEE, way(REAR_KNEE, 0));
    Map<BodyPoint, Point> marks = new EnumMap<>(centre);
    off.forEach((point, by) -> marks.put(point, sum(centre.get(point), by.times(-size))));
    return marks;
  }

  /** An offset in the picture; the segment leans {@code lean} radians forward. */
  private static Point way(Off off, double lean) {
    return new Point(
        off.along * Math.sin(lean) + off.ahead * Math.cos(lean),
        off.along * Math.cos(lean) - off.ahead * Math.sin(lean));
  }

  private static Point sum(Point a, Point b) {
    return new Point(a.x() + b.x(), a.y() + b.y());
  }

  /** Forward lean of a line that goes up, radians. */
  private static double fromUpright(Point lower, Point upper) {
    return Math.atan2(upper.x() - lower.x(), upper.y() - lower.y());
  }

  private static Point midHip(Map<BodyPoint, Point> p) {
    return between(p.get(BodyPoint.FRONT_HIP), p.get(BodyPoint.REAR_HIP));
  }

  private static Point midShoulder(Map<BodyPoint, Point> p) {
    return between(p.get(BodyPoint.NEAR_SHOULDER), p.get(BodyPoint.FAR_SHOULDER));
  }

  private static Point between(Point a, Point b) {
    return new Point((a.x() + b.x()) / 2, (a.y() + b.y()) / 2);
  }

  private static double apart(Point a, Point b) {
    return Math.hypot(a.x() - b.x(), a.y() - b.y());
  }

  private static double middle(
      List<Map<BodyPoint, Point>> frames, ToDoubleFunction<Map<BodyPoint, Point>> of) {
    double[] all = frames.stream().mapToDouble(of).sorted().toArray();
    return all.length == 0 ? 0 : (all[(all.length - 1) / 2] + all[all.length / 2]) / 2;
  }
}
