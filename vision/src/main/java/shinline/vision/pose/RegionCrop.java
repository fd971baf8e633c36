package shinline.vision.pose;

import java.nio.ByteBuffer;
import org.bytedeco.javacpp.indexer.DoubleIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.bytedeco.opencv.opencv_core.Size;
import shinline.vision.library.VideoLibraries;

/** Cuts a region out of frames as the models' input: planar RGB in a linear range of values. */
final class RegionCrop implements AutoCloseable {

  /** What lies outside the frame. */
  enum Border {
    REPLICATE(opencv_core.BORDER_REPLICATE),
    ZERO(opencv_core.BORDER_CONSTANT);

    private final int number;

    Border(int number) {
      this.number = number;
    }
  }

  private final int side;
  private final Border border;
  private final float low;
  private final float step;
  private final Size size;
  private final Scalar black;
  private final Mat affine;
  private final Mat crop;

  /** Given out again and again: a new one a look kept the garbage collector busy. */
  private final float[] rgb;

  /**
   * @param side pixels of the model's square input
   * @param low value of a black pixel
   * @param high value of a full one
   */
  RegionCrop(int side, Border border, double low, double high) {
    this.side = side;
    this.border = border;
    this.low = (float) low;
    this.step = (float) ((high - low) / 255);
    this.rgb = new float[3 * side * side];
    // A model may be loaded while another thread loads these.
    VideoLibraries.load();
    this.black = new Scalar(0, 0, 0, 0);
    this.affine = new Mat(2, 3, opencv_core.CV_64F);
    this.size = new Size(side, side);
    this.crop = new Mat(side, side, opencv_core.CV_8UC3);
  }

  /** Red, green and blue plane, row by row; good until the next call of this or {@link #planes}. */
  float[] cut(Mat frame, RegionOfInterest region, ImageFlip handedness) {
    return planes(pixels(frame, region), handedness);
  }

  /** Blue, green and red of each pixel, row by row. */
  byte[] pixels(Mat frame, RegionOfInterest region) {
    // Pixel (i, j) of the crop has its centre at ((i + 0.5) / side, (j + 0.5) / side).
    double half = 0.5 / side;
    double cell = 1.0 / side;
    double x = region.frameX(half, half);
    double y = region.frameY(half, half);
    try (DoubleIndexer m = affine.createIndexer()) {
      m.put(0, 0, region.frameX(half + cell, half) - x);
      m.put(0, 1, region.frameX(half, half + cell) - x);
      m.put(0, 2, x);
      m.put(1, 0, region.frameY(half + cell, half) - y);
      m.put(1, 1, region.frameY(half, half + cell) - y);
      m.put(1, 2, y);
    }
    opencv_imgproc.warpAffine(
        frame,
        crop,
        affine,
        size,
        opencv_imgproc.INTER_LINEAR | opencv_imgproc.WARP_INVERSE_MAP,
        border.number,
        black);
    ByteBuffer pixels = crop.createBuffer();
    byte[] bgr = new byte[3 * side * side];
    pixels.get(0, bgr);
    return bgr;
  }

  /** What {@link #pixels} gave, in the models' planes and range of values; good until the next. */
  float[] planes(byte[] bgr, ImageFlip handedness) {
    int plane = side * side;
    for (int row = 0; row < side; row++) {
      for (int column = 0; column < side; column++) {
        int target = row * side + (handedness == ImageFlip.MIRRORED ? side - 1 - column : column);
        int source = 3 * (row * side + column);
        for (int channel = 0; channel < 3; channel++) {
          rgb[channel * plane + target] = low + step * (bgr[source + 2 - channel] & 0xFF);
        }
      }
    }
    return rgb;
  }

  @Override
  public void close() {
    crop.close();
    affine.close();
    size.close();
    black.close();
  }
}
