package shinline.vision.pose;

final class HeavyPoseTrackerTest extends PoseEstimatorContract {
  @Override
  PoseEstimator open() {
    return PoseTracker.open(PoseModel.HEAVY, DETECTOR);
  }
}
