package shinline.vision.observation;

import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.pose.PersonDetector;

/** Looks for a second person in a few frames spread over the clip. */
public final class SecondPersonCheck {
  private static final int LOOKS = 5;

  /** Between looks when the clip does not promise a length. */
  private static final int FRAMES_BETWEEN = 60;

  /** One look may take a dumbbell rack for a person; two seldom do. */
  private static final int LOOKS_THAT_COUNT = 2;

  private final PersonDetector detector;
  private final int every;
  private int nextIndex;
  private int looksWithCompany;

  /**
   * @param detector stays the caller's to close
   * @param expectedFrames frames the clip promises; 0 when it does not say
   */
  public SecondPersonCheck(PersonDetector detector, int expectedFrames) {
    this.detector = detector;
    every = expectedFrames > 0 ? Math.max(1, expectedFrames / LOOKS) : FRAMES_BETWEEN;
    nextIndex = every / 2;
  }

  /** Looks at the picture when its turn has come. */
  public void look(int index, Mat bgrUpright) {
    if (index < nextIndex) {
      return;
    }
    nextIndex += every;
    if (detector.detect(bgrUpright).size() > 1) {
      looksWithCompany++;
    }
  }

  /** Whether more than one person was in the picture. */
  public boolean noticed() {
    return looksWithCompany >= LOOKS_THAT_COUNT;
  }
}
