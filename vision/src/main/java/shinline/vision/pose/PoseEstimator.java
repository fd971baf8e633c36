package shinline.vision.pose;

import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * Finds people's landmarks in the frames of a clip, one after the other.
 *
 * <p>Frames are upright, with square pixels, 8-bit BGR; they are not changed. Not for use by
 * several threads at once. The same frames and times after opening give the same answers, bit by
 * bit.
 */
public interface PoseEstimator extends AutoCloseable {

  /**
   * Everybody in the next frame of the clip.
   *
   * @param timeS the frame's time in seconds, after the last frame's
   */
  PeopleInView look(Mat bgrUpright, double timeS);

  /**
   * Everybody who changed pace, in a frame between the last two that were looked at; others count
   * as not looked at. What comes next does not depend on it.
   *
   * @param share of the time from the one to the other, 0…1
   * @param farOfStature who is farther than this from where the looks before were heading, by hips
   *     or shoulders, share of stature, is looked at
   * @return empty when nobody is, or what is seen there is not to be believed
   */
  Optional<PeopleInView> between(Mat bgrUpright, double share, double farOfStature);

  /** The same, of the one whose hips go down and up; before anybody moves, of the surest one. */
  default PoseSighting track(Mat bgrUpright, double timeS) {
    return look(bgrUpright, timeS).ofMover();
  }

  /**
   * Says that the frames are the right way up: from now on a pose that stands on its head is an
   * error of the model. Before, it may be a clip whose rotation is stored wrongly.
   */
  void pictureIsUpright();

  /** The pose in a region the caller chooses, whatever the pose flag; leaves the tracking alone. */
  PoseSighting.Found at(Mat bgrUpright, RegionOfInterest region, ImageFlip handedness);

  /** Forgets everybody: the next frame is of another clip or picture. */
  void beginAnew();

  @Override
  void close();
}
