package shinline.vision.clip;

import static org.bytedeco.ffmpeg.global.avutil.AVCOL_RANGE_JPEG;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_BT709;
import static org.bytedeco.ffmpeg.global.avutil.AVCOL_SPC_UNSPECIFIED;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_BGR24;
import static org.bytedeco.ffmpeg.global.swscale.SWS_BICUBIC;
import static org.bytedeco.ffmpeg.global.swscale.sws_freeContext;
import static org.bytedeco.ffmpeg.global.swscale.sws_getCachedContext;
import static org.bytedeco.ffmpeg.global.swscale.sws_getCoefficients;
import static org.bytedeco.ffmpeg.global.swscale.sws_scale;
import static org.bytedeco.ffmpeg.global.swscale.sws_setColorspaceDetails;
import static org.bytedeco.opencv.global.opencv_core.CV_8UC3;
import static org.bytedeco.opencv.global.opencv_core.swap;

import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.ffmpeg.swscale.SwsContext;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacpp.DoublePointer;
import org.bytedeco.javacpp.IntPointer;
import org.bytedeco.javacpp.PointerPointer;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.jspecify.annotations.Nullable;

/**
 * Turns a decoded picture into an upright BGR one with square pixels. Brightness of HDR (HLG)
 * pictures is not mapped: they come out flatter than on the phone, shapes unharmed.
 */
final class PictureConverter implements AutoCloseable {

  /** Pictures this high or more are high definition, whose colours follow BT.709 when unmarked. */
  private static final int HIGH_DEFINITION_HEIGHT = 720;

  /**
   * FFmpeg's scaler writes whole vectors and may write past a row's end; rows of this many pixels
   * more, and one row more, take that. A row that is a multiple of it needs the row more alone.
   */
  private static final int ROW_ALIGNMENT_PX = 64;

  /** One in sws's 16.16 fixed point, for contrast and saturation left as they are. */
  private static final int FIXED_ONE = 1 << 16;

  private final int width;
  private final int height;
  private final Orientation orientation;
  private final Mat scratch;
  private final Mat stored;
  private final PointerPointer<Mat> target = new PointerPointer<>(4);
  private final IntPointer targetStride = new IntPointer(4L);
  private @Nullable SwsContext scaler;

  /**
   * @param width of the stored picture with square pixels, before it is turned
   * @param height likewise
   */
  PictureConverter(int width, int height, Orientation orientation) {
    this.width = width;
    this.height = height;
    this.orientation = orientation;
    int row = (width / ROW_ALIGNMENT_PX + 1) * ROW_ALIGNMENT_PX;
    this.scratch = new Mat(height + 1, row, CV_8UC3);
    this.stored = new Mat(scratch, new Rect(0, 0, width, height));
  }

  /** Writes the upright picture into {@code image}, allocating it where size or type differ. */
  void convert(AVFrame picture, Mat image) {
    SwsContext ready =
        sws_getCachedContext(
            scaler,
            picture.width(),
            picture.height(),
            picture.format(),
            width,
            height,
            AV_PIX_FMT_BGR24,
            SWS_BICUBIC,
            null,
            null,
            (DoublePointer) null);
    scaler = ready;
    if (ready == null) {
      throw new IllegalStateException("no conversion from pixel format " + picture.format());
    }
    IntPointer coefficients = sws_getCoefficients(colourSpace(picture));
    int fullRange = picture.color_range() == AVCOL_RANGE_JPEG ? 1 : 0;
    sws_setColorspaceDetails(
        ready, coefficients, fullRange, coefficients, 1, 0, FIXED_ONE, FIXED_ONE);
    boolean atOnce = orientation.asStored() && width % ROW_ALIGNMENT_PX == 0;
    if (atOnce) {
      withRoom(image);
    }
    Mat into = atOnce ? image : scratch;
    target.put(0, into.data());
    targetStride.put(0, (int) into.step());
    sws_scale(ready, picture.data(), picture.linesize(), 0, picture.height(), target, targetStride);
    if (!atOnce) {
      orientation.apply(stored, image);
    }
  }

  /** Makes a picture of it that has a row to spare behind its last one, unless it is one. */
  private void withRoom(Mat image) {
    long rowBytes = 3L * width;
    if (image.rows() == height && image.cols() == width && image.type() == CV_8UC3) {
      try (BytePointer begin = image.data();
          BytePointer limit = image.datalimit()) {
        if (image.isContinuous() && limit.address() - begin.address() >= (height + 1) * rowBytes) {
          return;
        }
      }
    }
    try (Mat roomy = new Mat(height + 1, width, CV_8UC3);
        Mat made = roomy.rowRange(0, height)) {
      swap(made, image);
    }
  }

  private static int colourSpace(AVFrame picture) {
    int marked = picture.colorspace();
    boolean unmarkedHd =
        marked == AVCOL_SPC_UNSPECIFIED && picture.height() >= HIGH_DEFINITION_HEIGHT;
    return unmarkedHd ? AVCOL_SPC_BT709 : marked;
  }

  @Override
  public void close() {
    if (scaler != null) {
      sws_freeContext(scaler);
      scaler = null;
    }
    stored.close();
    scratch.close();
    target.close();
    targetStride.close();
  }
}
