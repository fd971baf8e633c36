package shinline.metrics.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;
import shinline.metrics.track.RobustStatistics;

/**
 * How far the camera is off a true side view, from how far the shoulders come apart along the
 * picture.
 *
 * @param spread distance of near and far shoulder along the picture, share of the seen trunk,
 *     median
 */
public record SideView(double spread) {

  /**
   * What the model draws of the shoulders seen from straight ahead, share of its hip-to-shoulder
   * line. Computer-made clips at 25, 45 and 90 degrees showed 0.35, 0.57 and 0.81 of it, so 0.82,
   * 0.81 and 0.81 once divided by the sine; true side views showed up to 0.08, and 12 degrees could
   * not be told from them.
   */
  private static final double SHOULDERS = 0.815;

  /** Beyond this the shin's angle cannot be put right any more (docs/measures.md). */
  public static final double REFUSED_DEG = 40;

  /** Less than this the shoulders do not tell: the model draws them nearly over each other. */
  public static final double LEAST_TOLD_DEG = 15;

  /** Beyond this the coach is warned. */
  public static final double WARNED_DEG = 20;

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
   * @return as {@link #yawDeg()}
   */
  public static double yawDeg(RawTrack track) {
    return of(track).map(SideView::yawDeg).orElse(0.0);
  }

  /** The yaw as far as it can be told, degrees; 0 for what may be a true side view. */
  public static double toldDeg(double yawDeg) {
    return yawDeg < LEAST_TOLD_DEG ? 0 : yawDeg;
  }

  /** Off a true side view, degrees, 0…90; rough: ± 10 degrees. */
  public double yawDeg() {
    return Math.toDegrees(Math.asin(Math.min(1, spread / SHOULDERS)));
  }
}
