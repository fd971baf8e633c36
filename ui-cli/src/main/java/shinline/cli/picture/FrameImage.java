package shinline.cli.picture;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.opencv.opencv_core.Mat;

/** Carries pictures between vision's form and the one Java draws on; both are BGR bytes. */
final class FrameImage {
  private FrameImage() {}

  /**
   * Copies a frame into an image to draw on.
   *
   * @param into used again when it has the right size
   */
  static BufferedImage copy(Mat bgr, BufferedImage into) {
    BufferedImage image =
        into.getWidth() == bgr.cols() && into.getHeight() == bgr.rows()
            ? into
            : new BufferedImage(bgr.cols(), bgr.rows(), BufferedImage.TYPE_3BYTE_BGR);
    byte[] bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    int row = 3 * bgr.cols();
    if (bgr.isContinuous()) {
      try (BytePointer data = bgr.data()) {
        data.get(bytes, 0, row * bgr.rows());
      }
      return image;
    }
    for (int y = 0; y < bgr.rows(); y++) {
      try (BytePointer data = bgr.ptr(y)) {
        data.get(bytes, y * row, row);
      }
    }
    return image;
  }

  /** Copies a part of a frame to where it belongs in an image that holds it whole. */
  static void place(Mat bgr, BufferedImage into, int leftPx, int topPx) {
    byte[] bytes = ((DataBufferByte) into.getRaster().getDataBuffer()).getData();
    for (int y = 0; y < bgr.rows(); y++) {
      try (BytePointer data = bgr.ptr(y)) {
        data.get(bytes, 3 * ((topPx + y) * into.getWidth() + leftPx), 3 * bgr.cols());
      }
    }
  }

  /**
   * Copies a drawn image into a frame of the same size.
   *
   * @param bgr continuous, BGR, 8 bits
   */
  static void copy(BufferedImage image, Mat bgr) {
    byte[] bytes = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    try (BytePointer data = bgr.data()) {
      data.put(bytes, 0, bytes.length);
    }
  }

  /** Something to pass where no image is there yet. */
  static BufferedImage none() {
    return new BufferedImage(1, 1, BufferedImage.TYPE_3BYTE_BGR);
  }
}
