package shinline.metrics.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;

/**
 * How far the camera is off a true side view, from how far the shoulders come apart along the
 * picture.
 *
 * @param spread distance of near and far shoulder along the picture, share of the seen trunk,
 *     median
 */
public record SideView(double spread) {

  /** Empty when the shoulders or hips are never seen. */
  public static Optional<SideView> of(RawTrack track) {
    List<Double> spreads = new ArrayList<>();
    List<Double> trunks = new ArrayList<>();
    for (RawPose pose : track.poses()) {
      RawSighting left = pose.points().get(RawPoint.LEFT_SHOULDER);
      RawSighting right = pose.points().get(RawPoint.RIGHT_SHOULDER);
      RawSighting hip = pose.points().get(RawPoint.LEFT_HIP);
      if (left != null && right != null && hip != null) {
        spreads.add(left.x() - right.x());
        trunks.add(Math.hypot(left.x() - hip.x(), left.y() - hip.y()));
      }
    }
    double trunk = RobustStatistics.median(trunks).orElse(0);
    OptionalDouble spread = RobustStatistics.median(spreads);
    return trunk > 0 && spread.isPresent()
        ? Optional.of(new SideView(Math.abs(spread.getAsDouble()) / trunk))
        : Optional.empty();
  }

  /**
   * What the track tells of the view, degrees; 0 when shoulders or hips are never seen.
   *
   * @return as {@link #yawDeg(Calibration)}
   */
  public static double yawDeg(RawTrack track, Calibration calibration) {
    return of(track).map(view -> view.yawDeg(calibration)).orElse(0.0);
  }

  /** Off a true side view, degrees, 0…90; rough: ± 10 degrees. */
  public double yawDeg(Calibration calibration) {
    double shoulders = calibration.value(CalibrationKey.SIDE_VIEW_SHOULDERS);
    return Math.toDegrees(Math.asin(Math.min(1, spread / shoulders)));
  }
}
