package shinline.cli.crossing;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;
import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.PoseSighting;
import shinline.vision.scene.CameraPath;
import shinline.vision.scene.Similarity;

/**
 * Turns the pose model's keypoints into metrics' raw track: pixels with y down become pixels with y
 * up, and the model's names become ours. Collects one clip, frame by frame.
 */
public final class TrackCrossing {
  private static final Map<RawPoint, BodyLandmark> LANDMARK_OF = landmarks();

  private final int widthPx;
  private final PictureAxis axis;
  private final List<RawPose> poses = new ArrayList<>();

  /**
   * @param widthPx width of the upright picture
   * @param heightPx height of the upright picture
   */
  public TrackCrossing(int widthPx, int heightPx) {
    this.widthPx = widthPx;
    axis = new PictureAxis(heightPx);
  }

  /**
   * Adds what was seen in one frame.
   *
   * @param frame index of the frame in the clip
   * @param timeS seconds from the first frame, after the last frame's
   */
  public void add(int frame, double timeS, PoseSighting sighting) {
    Map<RawPoint, RawSighting> points =
        sighting.fold(found -> points(found.keypoints()), nobody -> Map.of());
    poses.add(new RawPose(frame, timeS, points));
  }

  /**
   * Everything added so far, in the still view of the camera.
   *
   * @param camera how it moved, one look for each pose added
   */
  public RawTrack track(CameraPath camera) {
    List<RawPose> still = new ArrayList<>();
    for (int look = 0; look < poses.size(); look++) {
      still.add(moved(poses.get(look), camera.toStill(look)));
    }
    return new RawTrack(widthPx, axis.heightPx(), still);
  }

  private RawPose moved(RawPose pose, Similarity move) {
    if (move.equals(Similarity.IDENTITY)) {
      return pose;
    }
    Map<RawPoint, RawSighting> points = new EnumMap<>(RawPoint.class);
    pose.points()
        .forEach(
            (point, seen) -> {
              double down = axis.rowOf(seen.y());
              points.put(
                  point,
                  new RawSighting(
                      move.x(seen.x(), down),
                      axis.heightOf(move.y(seen.x(), down)),
                      seen.confidence()));
            });
    return new RawPose(pose.frame(), pose.timeS(), points);
  }

  private Map<RawPoint, RawSighting> points(Map<BodyLandmark, Keypoint> keypoints) {
    Map<RawPoint, RawSighting> points = new EnumMap<>(RawPoint.class);
    LANDMARK_OF.forEach(
        (point, landmark) -> {
          Keypoint seen = keypoints.get(landmark);
          if (seen != null) {
            points.put(
                point,
                new RawSighting(
                    seen.x(), axis.heightOf(seen.y()), seen.visibility() * seen.presence()));
          }
        });
    return points;
  }

  private static Map<RawPoint, BodyLandmark> landmarks() {
    Map<RawPoint, BodyLandmark> map = new EnumMap<>(RawPoint.class);
    for (RawPoint point : RawPoint.values()) {
      map.put(
          point,
          switch (point) {
            // The model calls the tip of the shoe after the second toe.
            case LEFT_TOE -> BodyLandmark.LEFT_FOOT_INDEX;
            case RIGHT_TOE -> BodyLandmark.RIGHT_FOOT_INDEX;
            default -> BodyLandmark.valueOf(point.name());
          });
    }
    return map;
  }
}
