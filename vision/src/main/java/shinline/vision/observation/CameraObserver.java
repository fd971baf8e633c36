package shinline.vision.observation;

import java.util.ArrayList;
import java.util.List;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.pose.PeopleInView;
import shinline.vision.scene.CameraMotion;
import shinline.vision.scene.CameraPath;
import shinline.vision.scene.Similarity;

/** Follows the room behind the people in view, to tell how the camera moved. */
public final class CameraObserver implements AutoCloseable {
  private final CameraMotion motion = new CameraMotion();
  private final List<Double> timesS = new ArrayList<>();

  /**
   * Told of every look.
   *
   * @param people none of them is part of the room
   */
  public void look(double timeS, Mat bgrUpright, PeopleInView people) {
    motion.add(bgrUpright, PoseShape.boxes(people));
    timesS.add(timeS);
  }

  /** How the camera was held. */
  public enum Hold {
    /** It did not move. */
    STILL,
    /** It moved, and the background tells how. */
    FOLLOWED,
    /** It moved, and the background tells too little. */
    NOT_FOLLOWED
  }

  /**
   * What was made out of the camera.
   *
   * @param moves one a look, from its frame to the still view
   */
  public record Told(Hold hold, List<Similarity> moves, CameraPath path) {}

  /** Told once, after the last look. */
  public Told told() {
    List<Similarity> moves = motion.toMiddleView();
    return motion
        .steadiness()
        .fold(
            steady -> new Told(Hold.STILL, moves, CameraPath.still()),
            moving -> new Told(Hold.FOLLOWED, moves, CameraPath.of(timesS, moves)),
            unsure -> new Told(Hold.NOT_FOLLOWED, moves, CameraPath.still()));
  }

  @Override
  public void close() {
    motion.close();
  }
}
