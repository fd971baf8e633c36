package shinline.metrics.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.RobustStatistics;

/**
 * The athlete's size in the picture, in pixels of the athlete's middle plane.
 *
 * @param staturePx standing height as the segments tell it
 * @param legPx hip to floor
 * @param footPx heel to toe of the front foot
 * @param frontPlane pixels in the front leg's plane for one pixel in the middle plane
 */
public record BodyScale(double staturePx, double legPx, double footPx, double frontPlane) {

  /**
   * Trunk, thigh and shank together are 0.753 of stature between the joint centres used here: mean
   * of five computer-made bodies, spread 1 %. (Drillis and Contini, in Winter 2009, have 0.779 with
   * the shoulder at the acromion.)
   */
  private static final double SEGMENTS_OF_STATURE = 0.7527;

  /** Hip height, Drillis and Contini 1966, in Winter 2009 fig. 4.1. */
  private static final double LEG_OF_STATURE = 0.530;

  /**
   * A leg lies about 0.10 m off the middle plane; at 3.6 m, the distance of docs/filming.md, the
   * nearer one is scaled by 3.6 / (3.6 − 0.10).
   */
  private static final double NEAR_PLANE = 1.028;

  /** Empty when a segment is never seen. */
  public static Optional<BodyScale> of(CleanTrack corrected) {
    double plane = corrected.source().frontLegNearCamera() ? NEAR_PLANE : 1 / NEAR_PLANE;
    OptionalDouble legPx = frontLeg(corrected);
    OptionalDouble trunkPx = corrected.trunkLength();
    OptionalDouble footPx = corrected.length(BodyPoint.FRONT_HEEL, BodyPoint.FRONT_TOE);
    if (legPx.isEmpty() || trunkPx.isEmpty() || footPx.isEmpty()) {
      return Optional.empty();
    }
    double stature = (trunkPx.getAsDouble() + legPx.getAsDouble() / plane) / SEGMENTS_OF_STATURE;
    return Optional.of(
        new BodyScale(stature, LEG_OF_STATURE * stature, footPx.getAsDouble(), plane));
  }

  /**
   * Thigh and shank together, frame by frame: what one loses to a misplaced knee the other gains.
   */
  private static OptionalDouble frontLeg(CleanTrack track) {
    CleanPath hip = track.path(BodyPoint.FRONT_HIP);
    CleanPath knee = track.path(BodyPoint.FRONT_KNEE);
    CleanPath ankle = track.path(BodyPoint.FRONT_ANKLE);
    List<Double> legs = new ArrayList<>();
    for (int i = 0; i < track.grid().size(); i++) {
      if (hip.seen(i) && knee.seen(i) && ankle.seen(i)) {
        legs.add(hip.at(i).distanceTo(knee.at(i)) + knee.at(i).distanceTo(ankle.at(i)));
      }
    }
    return RobustStatistics.median(legs);
  }
}
