package shinline.cli.check;

import shinline.vision.pose.PersonDetector;
import shinline.vision.pose.PersonSegmenter;
import shinline.vision.pose.PoseEstimator;
import shinline.vision.pose.PoseModel;
import shinline.vision.pose.PoseTracker;

/** The models that look at one clip, loaded. */
record Models(PersonDetector detector, PoseEstimator pose, PersonSegmenter segmenter)
    implements AutoCloseable {

  /** Loads all, or none when one of them fails; two at a time, the largest beside the others. */
  static Models load(PoseModel size) {
    try (SideThread second = new SideThread("beside-models")) {
      SideThread.Errand<PersonDetector> detector = second.begin(PersonDetector::open);
      SideThread.Errand<PersonSegmenter> segmenter = second.begin(PersonSegmenter::open);
      try {
        PoseEstimator pose = PoseTracker.open(size, detector::result);
        try {
          return new Models(detector.result(), pose, segmenter.result());
        } catch (RuntimeException | Error e) {
          pose.close();
          throw e;
        }
      } catch (RuntimeException | Error e) {
        detector.ifGood(PersonDetector::close);
        segmenter.ifGood(PersonSegmenter::close);
        throw e;
      }
    }
  }

  @Override
  public void close() {
    segmenter.close();
    pose.close();
    detector.close();
  }
}
