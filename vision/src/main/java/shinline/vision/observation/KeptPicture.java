package shinline.vision.observation;

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
 * @param jpeg the part as a JPEG file; not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // a picture is a file's worth of bytes, never compared
public record KeptPicture(int leftPx, int topPx, int widthPx, int heightPx, byte[] jpeg) {

  /**
   * The part's pixels.
   *
   * @return BGR, 8 bits; the caller's to close
   */
  public Mat picture() {
    try (BytePointer bytes = new BytePointer(jpeg);
        Mat file = new Mat(1, jpeg.length, opencv_core.CV_8U, bytes)) {
      return opencv_imgcodecs.imdecode(file, opencv_imgcodecs.IMREAD_COLOR);
    }
  }
}
