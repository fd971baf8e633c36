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

  CameraHold hold() {
    return motion
        .steadiness()
        .fold(
            steady -> CameraHold.STILL,
            moving -> CameraHold.STEADIED,
            unsure -> CameraHold.NOT_FOLLOWED);
  }

  /** One move a look, from its frame to the still view. */
  List<Similarity> moves() {
    return motion.toMiddleView();
  }

  CameraPath path() {
    return hold() == CameraHold.STEADIED ? CameraPath.of(timesS, moves()) : CameraPath.still();
  }

  @Override
  public void close() {
    motion.close();
  }
}
