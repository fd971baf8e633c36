package shinline.cli.check;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.bytedeco.javacpp.indexer.DoubleIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Scalar;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipEnding;
import shinline.vision.clip.ClipInfo;
import shinline.vision.clip.ClipOpening;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.DoubtfulPictures;
import shinline.vision.clip.Frame;
import shinline.vision.clip.FrameChoice;
import shinline.vision.clip.FrameTimes;
import shinline.vision.scene.Similarity;

/**
 * Reads the start of a clip, a little enlarged, as if its camera had been held in a hand, or not.
 */
final class ShakenReader implements ClipReader {
  /** Shaking must not show what lies beyond the picture's edge. */
  private static final double ZOOM = 1.06;

  private static final double SHIFT_SHARE = 0.012;
  private static final double TURN_DEG = 1.2;

  /** What the camera is held by. */
  enum Holder {
    HAND,
    TRIPOD
  }

  private final Holder holder;
  private final double untilS;

  ShakenReader(Holder holder, double untilS) {
    this.holder = holder;
    this.untilS = untilS;
  }

  /** From the file's picture to the one read at an instant. */
  Similarity shake(double timeS, int widthPx, int heightPx) {
    double amount = holder == Holder.HAND ? 1 : 0;
    double turn = Math.toRadians(amount * TURN_DEG * Math.sin(2 * Math.PI * 0.8 * timeS + 1));
    double a = ZOOM * Math.cos(turn);
    double b = ZOOM * Math.sin(turn);
    double cx = (widthPx - 1) / 2.0;
    double cy = (heightPx - 1) / 2.0;
    double right = amount * SHIFT_SHARE * widthPx * Math.sin(2 * Math.PI * 0.5 * timeS);
    double down = amount * SHIFT_SHARE * widthPx * Math.sin(2 * Math.PI * 0.9 * timeS + 2);
    return new Similarity(a, b, cx - a * cx + b * cy + right, cy - b * cx - a * cy + down);
  }

  @Override
  public ClipOpening open(Path file, ClipOptions options, FrameChoice looks) {
    return ClipReader.standard()
        .open(file, options, stamp -> looks.wants(stamp) && stamp.timeS() <= untilS)
        .fold(opened -> new ClipOpening.Opened(new Shaken(opened.clip())), refused -> refused);
  }

  private final class Shaken implements Clip {
    private final Clip inner;
    private final Mat shaken = new Mat();

    Shaken(Clip inner) {
      this.inner = inner;
    }

    @Override
    public ClipInfo info() {
      return inner.info();
    }

    @Override
    public Optional<Frame> next() {
      return nextInto(shaken);
    }

    @Override
    public Optional<Frame> nextInto(Mat image) {
      Optional<Frame> frame = inner.next();
      if (frame.isEmpty()) {
        return frame;
      }
      Frame still = frame.get();
      Mat picture = still.image();
      Similarity move = shake(still.timeS(), picture.cols(), picture.rows());
      try (Mat matrix = new Mat(2, 3, opencv_core.CV_64F);
          DoubleIndexer m = matrix.createIndexer();
          Scalar black = new Scalar(0)) {
        m.put(0, 0, move.a());
        m.put(0, 1, -move.b());
        m.put(0, 2, move.tx());
        m.put(1, 0, move.b());
        m.put(1, 1, move.a());
        m.put(1, 2, move.ty());
        opencv_imgproc.warpAffine(
            picture,
            image,
            matrix,
            picture.size(),
            opencv_imgproc.INTER_CUBIC,
            opencv_core.BORDER_REFLECT_101,
            black);
      }
      return Optional.of(new Frame(still.index(), still.timeS(), image));
    }

    @Override
    public List<DoubtfulPictures> doubtful() {
      return List.of();
    }

    @Override
    public ClipEnding ending() {
      return inner.ending();
    }

    @Override
    public FrameTimes times() {
      return inner.times();
    }

    @Override
    public void close() {
      inner.close();
      shaken.close();
    }
  }
}
