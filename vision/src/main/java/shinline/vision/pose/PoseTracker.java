package shinline.vision.pose;

import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * The landmark model led from frame to frame: each frame's region comes from the last frame's
 * auxiliary points, smoothed; the detector looks only at the first frame and when the pose is lost.
 */
public final class PoseTracker implements PoseEstimator {
  /** Below this pose flag the model itself takes the person for lost. */
  private static final double LEAST_POSE_FLAG = 0.5;

  private final PersonDetector detector;
  private final LandmarkModel landmarks;
  private final int settlingPasses;
  private final PoseOptions.Passes passes;

  private RegionFilter filter = new RegionFilter();
  private Optional<RegionOfInterest> next = Optional.empty();
  private int looks;

  private PoseTracker(PoseModel model, PoseOptions options, PersonDetector detector) {
    this.detector = detector;
    landmarks = new LandmarkModel(model, options.threads());
    settlingPasses = options.settlingPasses();
    passes = options.passes();
  }

  /**
   * Loads the landmark model; close the tracker to free its memory.
   *
   * @param detector stays the caller's to close, after the tracker
   */
  public static PoseTracker open(PoseModel model, PoseOptions options, PersonDetector detector) {
    return new PoseTracker(model, options, detector);
  }

  @Override
  public PoseSighting track(Mat bgrUpright, double timeS) {
    if (next.isPresent()) {
      LandmarkModel.Pass pass = landmarks.run(bgrUpright, next.get(), handedness());
      if (seen(pass)) {
        return accept(pass, timeS);
      }
    }
    next = Optional.empty();
    List<DetectedPerson> people = detector.detect(bgrUpright);
    if (people.isEmpty()) {
      return new PoseSighting.NobodyFound(PoseSighting.Reason.NO_PERSON_DETECTED);
    }
    filter = new RegionFilter();
    looks = 0;
    LandmarkModel.Pass pass =
        landmarks.run(bgrUpright, people.get(0).region(), ImageFlip.AS_FILMED);
    for (int i = 0; i < settlingPasses && seen(pass); i++) {
      pass = landmarks.run(bgrUpright, pass.circle().region(), ImageFlip.AS_FILMED);
    }
    return seen(pass)
        ? accept(pass, timeS)
        : new PoseSighting.NobodyFound(PoseSighting.Reason.NO_POSE_IN_REGION);
  }

  private ImageFlip handedness() {
    looks++;
    return passes == PoseOptions.Passes.ALTERNATING && looks % 2 == 1
        ? ImageFlip.MIRRORED
        : ImageFlip.AS_FILMED;
  }

  private static boolean seen(LandmarkModel.Pass pass) {
    return pass.pose().poseFlag() >= LEAST_POSE_FLAG;
  }

  private PoseSighting accept(LandmarkModel.Pass pass, double timeS) {
    next = Optional.of(filter.next(pass.circle(), timeS));
    return pass.pose();
  }

  @Override
  public PoseSighting.Found at(Mat bgrUpright, RegionOfInterest region, ImageFlip handedness) {
    return landmarks.run(bgrUpright, region, handedness).pose();
  }

  @Override
  public void follow(RegionOfInterest region) {
    filter = new RegionFilter();
    next = Optional.of(region);
  }

  @Override
  public void close() {
    landmarks.close();
  }
}
