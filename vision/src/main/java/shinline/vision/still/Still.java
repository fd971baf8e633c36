package shinline.vision.still;

import org.bytedeco.opencv.opencv_core.Mat;
import shinline.vision.clip.Orientation;

/**
 * A picture as it is to be shown.
 *
 * @param image BGR, 8 bits; this object's to close
 * @param orientation what was applied to the stored picture to get it
 */
public record Still(Mat image, Orientation orientation) implements AutoCloseable {

  public int widthPx() {
    return image.cols();
  }

  public int heightPx() {
    return image.rows();
  }

  /** The clockwise turn that was applied, after mirroring left to right where there was that. */
  public int turnedDeg() {
    return (orientation.clockwiseDeg() + (orientation.mirrored() ? 180 : 0)) % 360;
  }

  /** The same picture turned by more clockwise quarter turns; this one is closed. */
  public Still turnedMore(int quarterTurns) {
    Mat turned = new Mat();
    new Orientation(quarterTurns, false).apply(image, turned);
    image.close();
    return new Still(turned, orientation.turnedMore(quarterTurns));
  }

  @Override
  public void close() {
    image.close();
  }
}
