package shinline.vision.clip;

import static org.bytedeco.opencv.global.opencv_imgcodecs.IMWRITE_JPEG_QUALITY;
import static org.bytedeco.opencv.global.opencv_imgcodecs.imencode;

import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.opencv.opencv_core.Mat;

/** A picture as the bytes of an image file, for a report or a data URI. */
public final class FramePicture {
  private static final int BEST_QUALITY = 100;

  private FramePicture() {}

  /**
   * @param image BGR, 8 bits, not empty
   * @param quality 1…100; about 85 keeps thin drawn lines clean
   * @throws IllegalArgumentException for an empty image or a quality out of range
   */
  public static byte[] jpeg(Mat image, int quality) {
    if (quality < 1 || quality > BEST_QUALITY) {
      throw new IllegalArgumentException("JPEG quality must be 1 to 100, was " + quality);
    }
    try (IntPointer settings = new IntPointer(IMWRITE_JPEG_QUALITY, quality)) {
      return encode(".jpg", image, settings);
    }
  }

  /**
   * Without loss.
   *
   * @param image BGR, 8 bits, not empty
   * @throws IllegalArgumentException for an empty image
   */
  public static byte[] png(Mat image) {
    try (IntPointer none = new IntPointer(0L)) {
      return encode(".png", image, none);
    }
  }

  private static byte[] encode(String extension, Mat image, IntPointer settings) {
    if (image.empty()) {
      throw new IllegalArgumentException("an empty image has no picture");
    }
    try (BytePointer encoded = new BytePointer()) {
      if (!imencode(extension, image, encoded, settings)) {
        throw new IllegalArgumentException(
            "no " + extension + " from a picture of type " + image.type());
      }
      byte[] bytes = new byte[(int) encoded.limit()];
      encoded.get(bytes);
      return bytes;
    }
  }
}
