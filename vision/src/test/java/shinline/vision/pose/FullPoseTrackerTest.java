package shinline.vision.pose;

final class FullPoseTrackerTest extends PoseEstimatorContract {
  @Override
  PoseEstimator open() {
    return PoseTracker.open(PoseModel.FULL, DETECTOR);
  }
}
