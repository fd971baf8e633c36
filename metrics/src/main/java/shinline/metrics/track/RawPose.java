package shinline.metrics.track;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * What the pose model saw in one frame; empty when it found nobody.
 *
 * @param frame index of the frame in the clip, from 0
 * @param timeS seconds from the first frame
 */
public record RawPose(int frame, double timeS, Map<RawPoint, RawSighting> points) {
  public RawPose {
    EnumMap<RawPoint, RawSighting> copy = new EnumMap<>(RawPoint.class);
    copy.putAll(points);
    points = java.util.Collections.unmodifiableMap(copy);
  }

  public Optional<RawSighting> at(RawPoint point) {
    return Optional.ofNullable(points.get(point));
  }

  public boolean nobody() {
    return points.isEmpty();
  }
}
