package shinline.cli.check;

import shinline.vision.pose.PersonDetector;
import shinline.vision.pose.PersonSegmenter;
import shinline.vision.pose.PoseEstimator;
import shinline.vision.pose.PoseModel;
import shinline.vision.pose.PoseTracker;

/** The models that look at one clip, loaded. */
record Models(PersonDetector detector, PoseEstimator pose, PersonSegmenter segmenter)
    implements AutoCloseable {

  /** Loads all, or none when one of them fails; two at a time. */
  static Models load(PoseModel size) {
    try (SideThread second = new SideThread("beside-models")) {
      SideThread.Errand<PersonSegmenter> segmenter = second.begin(PersonSegmenter::open);
      try {
        PersonDetector detector = PersonDetector.open();
        try {
          PoseEstimator pose = PoseTracker.open(size, detector);
          try {
            return new Models(detector, pose, segmenter.result());
          } catch (RuntimeException | Error e) {
            pose.close();
            throw e;
          }
        } catch (RuntimeException | Error e) {
          detector.close();
          throw e;
        }
      } catch (RuntimeException | Error e) {
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
