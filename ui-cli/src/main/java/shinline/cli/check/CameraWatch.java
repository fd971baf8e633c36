package shinline.cli.check;

import java.util.ArrayList;
import java.util.List;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.cli.crossing.CameraPath;
import shinline.cli.crossing.PoseShape;
import shinline.metrics.result.SetUp.CameraHold;
import shinline.vision.pose.PoseSighting;
import shinline.vision.scene.CameraMotion;
import shinline.vision.scene.CameraMotionParameters;
import shinline.vision.scene.PersonBox;
import shinline.vision.scene.Similarity;

/** Follows the room behind the athlete, to tell how the camera moved. */
final class CameraWatch implements AutoCloseable {
  private final CameraMotion motion = new CameraMotion(CameraMotionParameters.defaults());
  private final List<Double> timesS = new ArrayList<>();

  void look(double timeS, Mat bgrUpright, PoseSighting sighting) {
    List<PersonBox> athlete = sighting.fold(PoseShape::parts, nobody -> List.of());
    motion.add(bgrUpright, athlete);
    timesS.add(timeS);
  }

  /**
   * What was made out of the camera.
   *
   * @param moves one a look, from its frame to the still view
   */
  record Told(CameraHold hold, List<Similarity> moves, CameraPath path) {}

  /** Told once, after the last look. */
  Told told() {
    List<Similarity> moves = motion.toMiddleView();
    return motion
        .steadiness()
        .fold(
            steady -> new Told(CameraHold.STILL, moves, CameraPath.still()),
            moving -> new Told(CameraHold.STEADIED, moves, CameraPath.of(timesS, moves)),
            unsure -> new Told(CameraHold.NOT_FOLLOWED, moves, CameraPath.still()));
  }

  @Override
  public void close() {
    motion.close();
  }
}
