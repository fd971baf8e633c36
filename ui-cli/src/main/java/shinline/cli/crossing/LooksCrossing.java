package shinline.cli.crossing;

import java.util.List;
import shinline.metrics.track.RawTrack;
import shinline.vision.pose.PoseSighting;
import shinline.vision.scene.CameraPath;

/** Many looks at one still picture as a track of one frame, looked at again and again. */
public final class LooksCrossing {
  /** As often as a clip is looked at: nobody moves, so that only the order counts. */
  private static final double STEP_S = 1.0 / 15;

  private LooksCrossing() {}

  /**
   * The looks as a track.
   *
   * @param widthPx width of the upright picture
   * @param heightPx height of the upright picture
   */
  public static RawTrack track(int widthPx, int heightPx, List<PoseSighting> looks) {
    TrackCrossing crossing = new TrackCrossing(widthPx, heightPx);
    for (int i = 0; i < looks.size(); i++) {
      crossing.add(0, i * STEP_S, looks.get(i));
    }
    return crossing.track(CameraPath.still());
  }
}
