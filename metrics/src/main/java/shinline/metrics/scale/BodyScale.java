package shinline.metrics.scale;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.BodyPoint;

/**
 * The athlete's size in the picture, in pixels of the athlete's middle plane.
 *
 * @param staturePx standing height as the segments tell it
 * @param legPx hip to floor
 * @param footPx heel to toe of the front foot
 * @param frontPlane pixels in the front leg's plane for one pixel in the middle plane
 */
public record BodyScale(double staturePx, double legPx, double footPx, double frontPlane) {

  /** Hip height, Drillis and Contini 1966, in Winter 2009 fig. 4.1. */
  private static final double LEG_OF_STATURE = 0.530;

  /** Empty when a segment is never seen. */
  public static Optional<BodyScale> of(CleanTrack corrected, Calibration calibration) {
    double near = calibration.value(CalibrationKey.BODY_NEAR_PLANE);
    double plane = corrected.source().frontLegNearCamera() ? near : 1 / near;
    OptionalDouble legPx = frontLeg(corrected);
    OptionalDouble trunkPx = corrected.trunkLength();
    OptionalDouble footPx = corrected.length(BodyPoint.FRONT_HEEL, BodyPoint.FRONT_TOE);
    if (legPx.isEmpty() || trunkPx.isEmpty() || footPx.isEmpty()) {
      return Optional.empty();
    }
    double stature =
        (trunkPx.getAsDouble() + legPx.getAsDouble() / plane)
            / calibration.value(CalibrationKey.BODY_SEGMENTS);
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
