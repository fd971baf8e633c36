package shinline.metrics.analysis;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.geometry.Point;
import shinline.metrics.geometry.SegmentAngles;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.reps.BottomWindow;
import shinline.metrics.result.Measure;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.view.Attitude;

/**
 * What an unsure attitude of the camera does to a measure: the posture at the bottom, put back into
 * the picture, is measured again as if roll, pitch, yaw or focal length were off by their standard
 * deviation, one at a time. A shin in the middle of the picture hardly changes with the pitch, one
 * near its edge does.
 */
final class AttitudeDoubt {
  private static final List<BodyPoint> NEEDED =
      List.of(
          BodyPoint.FRONT_HIP,
          BodyPoint.REAR_HIP,
          BodyPoint.FRONT_KNEE,
          BodyPoint.FRONT_ANKLE,
          BodyPoint.NEAR_SHOULDER,
          BodyPoint.FAR_SHOULDER);

  private final Body body;
  private final ViewGeometry view;
  private final Map<Attitude.Doubt, ViewGeometry> doubts;

  /**
   * @param rollOffDeg standard deviation of a roll that comes and goes, degrees; 0 for none
   */
  AttitudeDoubt(Body body, Attitude attitude, double rollOffDeg) {
    this.body = body;
    view = attitude.view();
    doubts = attitude.doubts(rollOffDeg);
  }

  /**
   * Standard deviation of a measure at the bottom: degrees, per cent, or pixels of the middle
   * plane; 0 where its points were not seen.
   */
  double sigma(Measure measure, BottomWindow window) {
    double sum = 0;
    for (Attitude.Doubt doubt : Attitude.Doubt.values()) {
      sum = Math.hypot(sum, sigma(measure, window, doubt));
    }
    return sum;
  }

  /** The part of one cause. */
  double sigma(Measure measure, BottomWindow window, Attitude.Doubt doubt) {
    ViewGeometry off = Objects.requireNonNull(doubts.get(doubt));
    return posture(window)
        .map(p -> Math.abs(value(measure, p.seen(view).real(off), p) - value(measure, p, p)))
        .orElse(0.0);
  }

  private Optional<Posture> posture(BottomWindow window) {
    Map<BodyPoint, Point> points = new EnumMap<>(BodyPoint.class);
    List<BodyPoint> wanted = new ArrayList<>(NEEDED);
    wanted.add(BodyPoint.REAR_KNEE);
    for (BodyPoint point : wanted) {
      CleanPath path = body.track().path(point);
      OptionalDouble x = window.bottomMedian(path.x());
      OptionalDouble y = window.bottomMedian(path.y());
      if (x.isPresent() && y.isPresent()) {
        points.put(point, new Point(x.getAsDouble(), y.getAsDouble()));
      }
    }
    points.put(BodyPoint.FRONT_TOE, body.toe());
    points.put(BodyPoint.FRONT_HEEL, body.heel());
    // What is told of the legs alone does not hang on a rear knee in the dark.
    points.putIfAbsent(BodyPoint.REAR_KNEE, body.toe());
    return points.keySet().containsAll(NEEDED)
        ? Optional.of(new Posture(points))
        : Optional.empty();
  }

  private static double value(Measure measure, Posture p, Posture nominal) {
    Point hip = p.at(BodyPoint.FRONT_HIP);
    Point knee = p.at(BodyPoint.FRONT_KNEE);
    Point ankle = p.at(BodyPoint.FRONT_ANKLE);
    Point toe = p.at(BodyPoint.FRONT_TOE);
    Point heel = p.at(BodyPoint.FRONT_HEEL);
    // Lengths come by the athlete's own size, which changes with the view as they do.
    double size = nominal.size() / p.size();
    return switch (measure) {
      case SHIN -> SegmentAngles.shinForward(ankle, knee).degrees();
      case TRUNK_LEAN -> SegmentAngles.trunkLean(p.midHip(), p.midShoulder()).degrees();
      case THIGH -> SegmentAngles.thighFromHorizontal(knee, hip).degrees();
      case KNEE_FLEXION -> SegmentAngles.kneeFlexion(hip, knee, ankle).degrees();
      case HIP_FLEXION ->
          SegmentAngles.hipFlexion(
                  SegmentAngles.segment(knee, hip),
                  SegmentAngles.segment(p.midHip(), p.midShoulder()))
              .degrees();
      case KNEE_PAST_TOE -> size * SegmentAngles.kneePastToe(knee, toe);
      case KNEE_PAST_TOE_FOOT -> 100 * SegmentAngles.kneePastToe(knee, toe) / heel.distanceTo(toe);
      case REAR_KNEE_HEIGHT -> size * (p.at(BodyPoint.REAR_KNEE).y() - heel.middle(toe).y());
      // The same view at the top and at the bottom: next to nothing.
      case HIP_TRAVEL, HIP_TRAVEL_LEG -> 0;
    };
  }

  /** Where the joints are at the bottom. */
  private record Posture(Map<BodyPoint, Point> points) {
    Point at(BodyPoint point) {
      return Objects.requireNonNull(points.get(point));
    }

    Point midHip() {
      return at(BodyPoint.FRONT_HIP).middle(at(BodyPoint.REAR_HIP));
    }

    Point midShoulder() {
      return at(BodyPoint.NEAR_SHOULDER).middle(at(BodyPoint.FAR_SHOULDER));
    }

    double size() {
      return midHip().distanceTo(midShoulder())
          + at(BodyPoint.FRONT_HIP).distanceTo(at(BodyPoint.FRONT_KNEE))
          + at(BodyPoint.FRONT_KNEE).distanceTo(at(BodyPoint.FRONT_ANKLE));
    }

    Posture seen(ViewGeometry by) {
      return moved(by::seen);
    }

    Posture real(ViewGeometry by) {
      return moved(by::real);
    }

    private Posture moved(UnaryOperator<Point> move) {
      Map<BodyPoint, Point> moved = new EnumMap<>(BodyPoint.class);
      points.forEach((name, place) -> moved.put(name, move.apply(place)));
      return new Posture(moved);
    }
  }
}
