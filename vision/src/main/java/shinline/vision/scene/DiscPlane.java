package shinline.vision.scene;

import java.util.List;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.MatVector;

/**
 * What of the picture is looked at: a black plate stands out in grey, a red one in colourfulness.
 */
public enum DiscPlane {
  GREY {
    @Override
    void read(Mat picture, Mat plane) {
      if (picture.channels() == 1) {
        picture.copyTo(plane);
      } else {
        opencv_imgproc.cvtColor(picture, plane, opencv_imgproc.COLOR_BGR2GRAY);
      }
    }
  },
  COLOURFULNESS {
    @Override
    void read(Mat picture, Mat plane) {
      try (MatVector channels = new MatVector();
          Mat most = new Mat();
          Mat least = new Mat()) {
        opencv_core.split(picture, channels);
        opencv_core.max(channels.get(0), channels.get(1), most);
        opencv_core.max(most, channels.get(2), most);
        opencv_core.min(channels.get(0), channels.get(1), least);
        opencv_core.min(least, channels.get(2), least);
        opencv_core.subtract(most, least, plane);
      }
    }
  };

  private static final List<DiscPlane> OF_A_GREY_PICTURE = List.of(GREY);
  private static final List<DiscPlane> OF_A_COLOUR_PICTURE = List.of(GREY, COLOURFULNESS);

  /** The planes a picture has. */
  public static List<DiscPlane> of(Mat picture) {
    return picture.channels() == 1 ? OF_A_GREY_PICTURE : OF_A_COLOUR_PICTURE;
  }

  /**
   * Reads the plane.
   *
   * @param picture 8-bit, BGR or grey
   * @param plane filled with 8-bit values
   */
  abstract void read(Mat picture, Mat plane);
}
