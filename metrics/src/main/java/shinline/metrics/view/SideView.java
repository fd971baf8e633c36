package shinline.metrics.view;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.LegTrack;
import shinline.metrics.track.Middle;
import shinline.metrics.track.PointPath;

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
  private static final double SHOULDERS = 0.21;

  /**
   * Spread that a true side view shows all the same: the trunk turns a little with the split
   * stance.
   */
  private static final double REST = 0.02;

  /** Beyond this the shin's angle cannot be put right any more (docs/measures.md). */
  public static final double REFUSED_DEG = 40;

  /** Beyond this the coach is warned. */
  public static final double WARNED_DEG = 20;

  public static SideView of(LegTrack track) {
    PointPath near = track.path(BodyPoint.NEAR_SHOULDER);
    PointPath far = track.path(BodyPoint.FAR_SHOULDER);
    List<Double> spreads = new ArrayList<>();
    for (int i = 0; i < near.size(); i++) {
      if (near.seen(i) && far.seen(i)) {
        spreads.add(near.x(i) - far.x(i));
      }
    }
    OptionalDouble middle = Middle.median(spreads);
    return new SideView(Math.abs(middle.orElse(0)) / track.bodyPx());
  }

  /** Off a true side view, degrees, 0…90; rough: ± 10 degrees. */
  public double yawDeg() {
    return Math.toDegrees(Math.asin(Math.min(1, Math.max(0, spread - REST) / SHOULDERS)));
  }
}
