package shinline.vision.pose;

import java.util.Optional;
import java.util.function.Supplier;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * The landmark model led from frame to frame: each frame's region comes from the last frame's
 * auxiliary points, smoothed; the detector looks at the first frame, when a pose is lost, and once
 * a second for others in view.
 */
public final class PoseTracker implements PoseEstimator {
  private final LandmarkModel landmarks;
  private final PeopleTracker people;

  private PoseTracker(LandmarkModel landmarks, PersonDetector detector) {
    this.landmarks = landmarks;
    people = new PeopleTracker(detector::detect, landmarks);
  }

  /**
   * Loads the landmark model; close the tracker to free its memory.
   *
   * @param detector stays the caller's to close, after the tracker
   */
  public static PoseTracker open(PoseModel model, PersonDetector detector) {
    return open(model, () -> detector);
  }

  /**
   * The same with a detector that may still be loading.
   *
   * @param detector asked for when the landmark model has been loaded; what it throws is thrown
   */
  public static PoseTracker open(PoseModel model, Supplier<PersonDetector> detector) {
    LandmarkModel landmarks = new LandmarkModel(model);
    try {
      return new PoseTracker(landmarks, detector.get());
    } catch (RuntimeException | Error e) {
      landmarks.close();
      throw e;
    }
  }

  @Override
  public PeopleInView look(Mat bgrUpright, double timeS) {
    return people.look(bgrUpright, timeS);
  }

  @Override
  public Optional<PeopleInView> between(Mat bgrUpright, double share, double farOfStature) {
    return people.between(bgrUpright, share, farOfStature);
  }

  @Override
  public void pictureIsUpright() {
    people.pictureIsUpright();
  }

  @Override
  public PoseSighting.Found at(Mat bgrUpright, RegionOfInterest region, ImageFlip handedness) {
    return landmarks.run(bgrUpright, region, handedness).pose();
  }

  @Override
  public void beginAnew() {
    people.beginAnew();
  }

  @Override
  public void close() {
    landmarks.close();
  }
}
