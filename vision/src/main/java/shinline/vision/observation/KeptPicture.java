package shinline.vision.observation;

import java.nio.ByteBuffer;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgcodecs;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * The part of one frame in which the athlete is.
 *
 * @param leftPx its first column in the upright frame
 * @param topPx its first row
 * @param widthPx pixels, as large as in the frame
 * @param heightPx pixels
 * @param jpeg the part as a JPEG file, from 0 to its capacity; not to be changed. It lies outside
 *     Java's heap, where some hundred of them would be moved about by the garbage collector
 */
public record KeptPicture(int leftPx, int topPx, int widthPx, int heightPx, ByteBuffer jpeg) {

  /**
   * The part's pixels.
   *
   * @return BGR, 8 bits; the caller's to close
   */
  public Mat picture() {
    try (BytePointer bytes = new BytePointer(jpeg.duplicate().rewind());
        Mat file = new Mat(1, bytes(), opencv_core.CV_8U, bytes)) {
      return opencv_imgcodecs.imdecode(file, opencv_imgcodecs.IMREAD_COLOR);
    }
  }

  /** Size of the JPEG file. */
  int bytes() {
    return jpeg.capacity();
  }
}
