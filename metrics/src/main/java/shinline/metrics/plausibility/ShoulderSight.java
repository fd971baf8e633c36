package shinline.metrics.plausibility;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;

/**
 * Whether the shoulders can be seen, or something before them hides them: the near disc of a bar on
 * the back, as a rule.
 *
 * <p>The model claims to see shoulders, ears and nose behind a disc as surely as any others, and
 * puts them off by 10 degrees of trunk lean and more. What it does not claim to see then is the
 * arms: they go up to the bar, and the disc that hides the shoulders hides them, too.
 */
public enum ShoulderSight {
  SEEN,
  HIDDEN;

  /** What a clip tells: by the surer elbow times the surer wrist, middle over the clip. */
  public static ShoulderSight of(RawTrack track, Calibration calibration) {
    List<Double> arms = new ArrayList<>();
    for (RawPose pose : track.poses()) {
      if (!pose.nobody()) {
        arms.add(
            surer(pose, RawPoint.LEFT_ELBOW, RawPoint.RIGHT_ELBOW)
                * surer(pose, RawPoint.LEFT_WRIST, RawPoint.RIGHT_WRIST));
      }
    }
    return RobustStatistics.median(arms).orElse(1)
            < calibration.value(CalibrationKey.SHOULDERS_LEAST_ARM)
        ? HIDDEN
        : SEEN;
  }

  /** The track without the shoulders, where they cannot be seen. */
  public RawTrack believed(RawTrack track) {
    if (this == SEEN) {
      return track;
    }
    List<RawPose> poses = new ArrayList<>();
    for (RawPose pose : track.poses()) {
      Map<RawPoint, RawSighting> points = new EnumMap<>(RawPoint.class);
      points.putAll(pose.points());
      points.remove(RawPoint.LEFT_SHOULDER);
      points.remove(RawPoint.RIGHT_SHOULDER);
      poses.add(new RawPose(pose.frame(), pose.timeS(), points));
    }
    return new RawTrack(track.widthPx(), track.heightPx(), poses);
  }

  /** A track without arms says nothing against the shoulders. */
  private static double surer(RawPose pose, RawPoint left, RawPoint right) {
    RawSighting l = pose.points().get(left);
    RawSighting r = pose.points().get(right);
    if (l == null && r == null) {
      return 1;
    }
    return Math.max(l == null ? 0 : l.confidence(), r == null ? 0 : r.confidence());
  }
}
