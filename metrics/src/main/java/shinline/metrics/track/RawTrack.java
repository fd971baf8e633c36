package shinline.metrics.track;

import java.util.List;

/**
 * The pose of the athlete over a clip, as seen, before any cleaning.
 *
 * @param widthPx width of the upright picture
 * @param heightPx height of the upright picture
 * @param poses one a frame that was looked at, times strictly rising
 */
public record RawTrack(int widthPx, int heightPx, List<RawPose> poses) {
  public RawTrack {
    if (widthPx <= 0 || heightPx <= 0) {
      throw new IllegalArgumentException("picture of " + widthPx + "x" + heightPx + " px");
    }
    poses = List.copyOf(poses);
    for (int i = 1; i < poses.size(); i++) {
      if (poses.get(i).timeS() <= poses.get(i - 1).timeS()) {
        throw new IllegalArgumentException(
            "times must rise: " + poses.get(i - 1).timeS() + " s, " + poses.get(i).timeS() + " s");
      }
    }
  }
}
