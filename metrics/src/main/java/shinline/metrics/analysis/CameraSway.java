package shinline.metrics.analysis;

import java.util.List;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.result.SetUp.CameraHold;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.BodyPoint;

/**
 * How much a hand-held camera that nothing could steady moves the athlete about in the picture. The
 * planted front foot tells it: ankle, heel and toe do not go to and fro together unless the picture
 * does.
 *
 * @param px standard deviation of the picture's shift at the foot, pixels; 0 when it is not noticed
 * @param rollDeg standard deviation of the camera's roll that goes with such a shift, degrees
 */
record CameraSway(double px, double rollDeg) {
  static final CameraSway NONE = new CameraSway(0, 0);

  static CameraSway of(CameraHold hold, Body body) {
    if (hold != CameraHold.NOT_FOLLOWED) {
      return NONE;
    }
    double px = Double.POSITIVE_INFINITY;
    for (BodyPoint point :
        List.of(BodyPoint.FRONT_ANKLE, BodyPoint.FRONT_HEEL, BodyPoint.FRONT_TOE)) {
      px = Math.min(px, levelSpread(body.track().path(point)));
    }
    double stature = body.scale().staturePx();
    // Less is what the pose model itself moves a planted foot by.
    double noticed = body.calibration().value(CalibrationKey.SWAY_NOTICED);
    if (Double.isInfinite(px) || px < noticed * stature) {
      return NONE;
    }
    // Hands turn a phone while they shift it. Taken as one radian for a shift of one stature; clips
    // shaken by 1.5 % of the width and 1.5 degrees had four fifths of that.
    return new CameraSway(px, Math.toDegrees(px / stature));
  }

  boolean noticed() {
    return px > 0;
  }

  /** Only to and fro: a heel or forefoot that lifts moves its own point up, and is a fault. */
  private static double levelSpread(CleanPath path) {
    return RobustStatistics.spread(path.x().seenValues()).orElse(Double.POSITIVE_INFINITY);
  }
}
