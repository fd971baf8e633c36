package shinline.metrics.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.track.Middle;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;

/**
 * How far the camera is off a true side view, from how far the shoulders and the hips come apart.
 *
 * @param spread distance of near and far shoulder along the picture, share of stature, median
 */
public record SideView(double spread) {

  /**
   * Shoulder joints are about 0.21 of stature apart (biacromial breadth less the deltoids; from
   * memory).
   */
  /** The model's trunk, hip to shoulder, of stature. */
  private static final double TRUNK = 0.26;

  private static final double SHOULDERS = 0.21;

  /**
   * Spread that a true side view shows all the same: the trunk turns a little with the split
   * stance.
   */
  private static final double REST = 0.02;

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
    double trunk = Middle.median(trunks).orElse(0);
    OptionalDouble spread = Middle.median(spreads);
    return trunk > 0 && spread.isPresent()
        ? Optional.of(new SideView(Math.abs(spread.getAsDouble()) * TRUNK / trunk))
        : Optional.empty();
  }

  /** Off a true side view, degrees, 0…90; rough: ± 10 degrees. */
  public double yawDeg() {
    return Math.toDegrees(Math.asin(Math.min(1, Math.max(0, spread - REST) / SHOULDERS)));
  }
}
