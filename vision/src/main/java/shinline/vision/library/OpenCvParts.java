package shinline.vision.library;

import java.util.List;
import org.bytedeco.javacpp.Loader;

/**
 * Leaves out the parts of OpenCV that nothing here uses, but that its Java side loads together with
 * the optical flow: its windows, and a second copy of the linear algebra. The windows need GTK 2,
 * which many a Linux computer does not have; there every clip would fail.
 */
public final class OpenCvParts {
  /** While this is {@code false}, a class of JavaCPP comes up without its native library. */
  private static final String SWITCH = "org.bytedeco.javacpp.loadlibraries";

  private static final List<String> LEFT_OUT =
      List.of("opencv.global.opencv_highgui", "openblas.global.openblas_nolapack");

  private OpenCvParts() {}

  /**
   * To be called before anything else of OpenCV or FFmpeg, and while no other thread loads any of
   * it: what is loaded meanwhile would come up without its library, too. Again does nothing.
   */
  public static void choose() {
    Chosen.ONCE.run();
  }

  /** Its initialization happens once, whoever asks. */
  private static final class Chosen {
    static final Runnable ONCE = () -> {};

    static {
      String before = System.getProperty(SWITCH);
      System.setProperty(SWITCH, "false");
      try {
        for (String part : LEFT_OUT) {
          Class.forName("org.bytedeco." + part, true, Loader.class.getClassLoader());
        }
      } catch (ClassNotFoundException e) {
        throw new IllegalStateException("OpenCV's Java side is not there", e);
      } finally {
        if (before == null) {
          System.clearProperty(SWITCH);
        } else {
          System.setProperty(SWITCH, before);
        }
      }
    }
  }
}
