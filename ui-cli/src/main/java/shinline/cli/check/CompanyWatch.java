package shinline.cli.check;

import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.pose.PersonDetector;

/** Looks for a second person in a few frames spread over the clip. */
final class CompanyWatch implements AutoCloseable {
  private static final int LOOKS = 5;

  /** Between looks when the clip does not promise a length. */
  private static final int FRAMES_BETWEEN = 60;

  /** One look may take a dumbbell rack for a person; two seldom do. */
  private static final int LOOKS_THAT_COUNT = 2;

  private final PersonDetector detector = PersonDetector.open(1);
  private final int every;
  private int looksWithCompany;

  /**
   * @param expectedFrames frames the clip promises; 0 when it does not say
   */
  CompanyWatch(int expectedFrames) {
    this.every = expectedFrames > 0 ? Math.max(1, expectedFrames / LOOKS) : FRAMES_BETWEEN;
  }

  void frame(int index, Mat bgrUpright) {
    if (index % every == every / 2 && detector.detect(bgrUpright).size() > 1) {
      looksWithCompany++;
    }
  }

  Optional<String> warning() {
    return looksWithCompany >= LOOKS_THAT_COUNT
        ? Optional.of(
            "more than one person is in the picture, and the wrong one may have been measured:"
                + " film with nobody else in view")
        : Optional.empty();
  }

  @Override
  public void close() {
    detector.close();
  }
}
