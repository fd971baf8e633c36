package shinline.vision.scene;

import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Size;

/** Grey values that can be read between the pixels. */
final class GreyPicture {
  private final int cols;
  private final int rows;
  private final byte[] values;

  private GreyPicture(int cols, int rows, byte[] values) {
    this.cols = cols;
    this.rows = rows;
    this.values = values;
  }

  /** A lightly smoothed copy of an 8-bit grey picture. */
  static GreyPicture smoothed(Mat grey) {
    try (Mat smooth = new Mat();
        Size kernel = new Size(5, 5)) {
      opencv_imgproc.GaussianBlur(grey, smooth, kernel, 1.0);
      byte[] values = new byte[smooth.rows() * smooth.cols()];
      try (BytePointer data = smooth.data()) {
        data.get(values);
      }
      return new GreyPicture(smooth.cols(), smooth.rows(), values);
    }
  }

  boolean covers(double x, double y) {
    return x >= 0 && y >= 0 && x < cols - 1 && y < rows - 1;
  }

  /** Bilinear value; the point must be covered. */
  double at(double x, double y) {
    int column = (int) x;
    int row = (int) y;
    double fx = x - column;
    double fy = y - row;
    int i = row * cols + column;
    double upper = (1 - fx) * grey(i) + fx * grey(i + 1);
    double lower = (1 - fx) * grey(i + cols) + fx * grey(i + cols + 1);
    return (1 - fy) * upper + fy * lower;
  }

  private int grey(int index) {
    return values[index] & 0xff;
  }
}
