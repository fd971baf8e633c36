package shinline.metrics.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.geometry.Point;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;
import shinline.metrics.track.Side;

/**
 * How the two sides of the trunk come apart in the picture, the middle over a clip, in trunk
 * lengths. Seen from the side they lie behind each other; a camera that stands ahead sees the near
 * shoulder behind the far one, and one that looks down sees the near side lower.
 *
 * @param shoulderAhead near shoulder ahead of the far one
 * @param shoulderAbove near shoulder above the far one
 * @param hipAbove near hip above the far one
 * @param placeAhead mid-shoulder ahead of the picture's centre, longer sides of the picture
 * @param placeAbove mid-shoulder above the picture's centre, longer sides of the picture
 */
public record TrunkSight(
    double shoulderAhead,
    double shoulderAbove,
    double hipAbove,
    double placeAhead,
    double placeAbove) {

  /** Where the model turns the body upside down for a while, its shoulders are no evidence. */
  private static final double LEAST_UPRIGHT = 0.9;

  /** Fewer looks than this tell nothing. */
  private static final int LEAST_LOOKS = 8;

  /** Empty when shoulders or hips are not seen, or the arms turn the shoulders. */
  public static Optional<TrunkSight> of(RawTrack track, Side facing, Calibration calibration) {
    Sides near = Sides.of(facing);
    Sides far = Sides.of(facing == Side.RIGHT ? Side.LEFT : Side.RIGHT);
    List<Look> all = new ArrayList<>();
    for (RawPose pose : track.poses()) {
      Look.of(pose, near, far, facing == Side.RIGHT ? 1 : -1).ifPresent(all::add);
    }
    List<Look> looks = all.stream().filter(Look::upright).toList();
    double trunk = of(looks, Look::trunk);
    if (looks.size() < LEAST_LOOKS || looks.size() < LEAST_UPRIGHT * all.size()) {
      return Optional.empty();
    }
    double nearWristAhead = of(looks, l -> l.nearWrist.x() - l.nearShoulder.x()) / trunk;
    double farWristAhead = of(looks, l -> l.farWrist.x() - l.farShoulder.x()) / trunk;
    double nearWristAbove = of(looks, l -> l.nearWrist.y() - l.nearShoulder.y()) / trunk;
    double farWristAbove = of(looks, l -> l.farWrist.y() - l.farShoulder.y()) / trunk;
    boolean quiet =
        quiet(nearWristAhead, nearWristAbove, calibration)
            && quiet(farWristAhead, farWristAbove, calibration)
            && Math.abs(nearWristAhead - farWristAhead)
                < calibration.value(CalibrationKey.TRUNK_REACHING);
    double longSide = Math.max(track.widthPx(), track.heightPx());
    double centreX = (facing == Side.RIGHT ? 1 : -1) * (track.widthPx() - 1) / 2.0;
    double centreY = (track.heightPx() - 1) / 2.0;
    return quiet
        ? Optional.of(
            new TrunkSight(
                of(looks, l -> l.nearShoulder.x() - l.farShoulder.x()) / trunk,
                of(looks, l -> l.nearShoulder.y() - l.farShoulder.y()) / trunk,
                of(looks, l -> l.nearHip.y() - l.farHip.y()) / trunk,
                (of(looks, l -> l.midShoulder().x()) - centreX) / longSide,
                (of(looks, l -> l.midShoulder().y()) - centreY) / longSide))
        : Optional.empty();
  }

  /** A hand that hangs, or holds a load before the chest. */
  private static boolean quiet(double ahead, double above, Calibration calibration) {
    return above < calibration.value(CalibrationKey.TRUNK_WRIST_RAISED)
        || (ahead > calibration.value(CalibrationKey.TRUNK_WRIST_AHEAD) && above < 0);
  }

  private static double of(List<Look> looks, ToDoubleFunction<Look> value) {
    return RobustStatistics.median(
            new ArrayList<>(looks.stream().map(l -> value.applyAsDouble(l)).toList()))
        .orElse(0);
  }

  /** Names of one side's points. */
  private record Sides(RawPoint shoulder, RawPoint hip, RawPoint wrist) {
    static Sides of(Side side) {
      return side == Side.RIGHT
          ? new Sides(RawPoint.RIGHT_SHOULDER, RawPoint.RIGHT_HIP, RawPoint.RIGHT_WRIST)
          : new Sides(RawPoint.LEFT_SHOULDER, RawPoint.LEFT_HIP, RawPoint.LEFT_WRIST);
    }
  }

  /** One look, x forward. */
  private record Look(
      Point nearShoulder,
      Point farShoulder,
      Point nearHip,
      Point farHip,
      Point nearWrist,
      Point farWrist) {

    static Optional<Look> of(RawPose pose, Sides near, Sides far, double ahead) {
      List<Point> places = new ArrayList<>();
      for (RawPoint point :
          List.of(near.shoulder, far.shoulder, near.hip, far.hip, near.wrist, far.wrist)) {
        // A hand that is not seen is taken to hang: its side's hip lies where it would.
        RawSighting seen =
            pose.points().getOrDefault(point, pose.points().get(hipOf(point, near, far)));
        if (seen == null) {
          return Optional.empty();
        }
        places.add(new Point(ahead * seen.x(), seen.y()));
      }
      return Optional.of(
          new Look(
              places.get(0),
              places.get(1),
              places.get(2),
              places.get(3),
              places.get(4),
              places.get(5)));
    }

    private static RawPoint hipOf(RawPoint point, Sides near, Sides far) {
      return point == near.wrist ? near.hip : point == far.wrist ? far.hip : point;
    }

    Point midShoulder() {
      return nearShoulder.middle(farShoulder);
    }

    boolean upright() {
      return midShoulder().y() - nearHip.middle(farHip).y() > 0.3 * trunk();
    }

    double trunk() {
      return midShoulder().distanceTo(nearHip.middle(farHip));
    }
  }
}
