package shinline.metrics.track;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import shinline.metrics.statistics.RobustStatistics;

/**
 * A raw track seen so that the athlete faces +x: x is mirrored when the athlete faces left. Left
 * and right are still the model's claim.
 */
final class ForwardTrack {
  private final double[] timeS;
  private final Map<RawPoint, PointPath> paths;
  private final double bodyPx;

  private ForwardTrack(double[] timeS, Map<RawPoint, PointPath> paths, double bodyPx) {
    this.timeS = timeS;
    this.paths = paths;
    this.bodyPx = bodyPx;
  }

  static ForwardTrack of(RawTrack track, Side facing, LegIdentityParameters parameters) {
    int n = track.poses().size();
    double sign = facing == Side.RIGHT ? 1 : -1;
    Map<RawPoint, PointPath.Builder> builders = new EnumMap<>(RawPoint.class);
    for (RawPoint point : RawPoint.values()) {
      builders.put(point, PointPath.ofSize(n));
    }
    double[] timeS = new double[n];
    for (int i = 0; i < n; i++) {
      RawPose pose = track.poses().get(i);
      timeS[i] = pose.timeS();
      for (Map.Entry<RawPoint, RawSighting> entry : pose.points().entrySet()) {
        RawSighting s = entry.getValue();
        if (s.confidence() >= parameters.leastConfidence()) {
          Objects.requireNonNull(builders.get(entry.getKey()))
              .put(i, sign * s.x(), s.y(), s.confidence());
        }
      }
    }
    Map<RawPoint, PointPath> paths = new EnumMap<>(RawPoint.class);
    builders.forEach((point, builder) -> paths.put(point, builder.build()));
    return new ForwardTrack(timeS, paths, bodySize(paths, n));
  }

  /** Stature in pixels, roughly: the trunk is 0.26 of it between the model's hips and shoulders. */
  private static double bodySize(Map<RawPoint, PointPath> paths, int n) {
    List<Double> trunks = new ArrayList<>();
    for (Side side : Side.values()) {
      PointPath hip = Objects.requireNonNull(paths.get(of(Joint.HIP, side)));
      PointPath shoulder = Objects.requireNonNull(paths.get(of(Joint.SHOULDER, side)));
      for (int i = 0; i < n; i++) {
        if (hip.seen(i) && shoulder.seen(i)) {
          trunks.add(hip.distance(shoulder, i));
        }
      }
    }
    return RobustStatistics.median(trunks).orElse(0) / 0.26;
  }

  /** Joints that come in pairs. */
  enum Joint {
    EAR,
    SHOULDER,
    HIP,
    KNEE,
    ANKLE,
    HEEL,
    TOE
  }

  static RawPoint of(Joint joint, Side side) {
    return RawPoint.valueOf(side.name() + "_" + joint.name());
  }

  PointPath path(Joint joint, Side side) {
    return Objects.requireNonNull(paths.get(of(joint, side)));
  }

  int frames() {
    return timeS.length;
  }

  double[] timeS() {
    return timeS.clone();
  }

  double bodyPx() {
    return bodyPx;
  }
}
