package shinline.cli.speed;

import static org.bytedeco.opencv.global.opencv_core.CV_64F;
import static org.bytedeco.opencv.global.opencv_core.CV_8UC3;
import static org.bytedeco.opencv.global.opencv_core.add;
import static org.bytedeco.opencv.global.opencv_core.addWeighted;
import static org.bytedeco.opencv.global.opencv_core.randn;
import static org.bytedeco.opencv.global.opencv_core.setRNGSeed;
import static org.bytedeco.opencv.global.opencv_imgproc.INTER_CUBIC;
import static org.bytedeco.opencv.global.opencv_imgproc.resize;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Random;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.bytedeco.opencv.opencv_core.Size;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.ClipWriter;
import shinline.vision.clip.Frame;
import shinline.vision.clip.WriterOpening;

/**
 * A clip made of a sample clip. Noise like a phone's makes every picture cost bytes, as scaled-up
 * pictures alone would be easier to decode than filmed ones.
 *
 * @param words for the table
 * @param scale how much larger than the sample
 * @param perPicture pictures made of each of the sample's: with 2, one between two is their mean
 * @param rounds how often the sample is played
 * @param noise standard deviation, grey levels
 */
record SpeedClip(String words, int scale, int perPicture, int rounds, double noise) {
  private static final double SAMPLE_FPS = 30;
  private static final int SHIFT_PX = 64;

  void write(Path sample, Path target) throws IOException {
    setRNGSeed(1);
    Random random = new Random(1);
    int width;
    int height;
    try (Clip clip = open(sample)) {
      width = scale * clip.info().widthPx();
      height = scale * clip.info().heightPx();
    }
    double fps = SAMPLE_FPS * perPicture;
    WriterOpening opening = ClipWriter.open(target, width, height, fps);
    try (ClipWriter writer = ((WriterOpening.Ready) opening).writer();
        Mat grain = grain(width, height);
        Mat picture = new Mat(height, width, CV_8UC3);
        Mat before = new Mat(height, width, CV_8UC3);
        Mat between = new Mat(height, width, CV_8UC3)) {
      int written = 0;
      for (int round = 0; round < rounds; round++) {
        try (Clip clip = open(sample)) {
          for (Optional<Frame> f = clip.next(); f.isPresent(); f = clip.next()) {
            resize(f.get().image(), picture, new Size(width, height), 0, 0, INTER_CUBIC);
            for (int part = 1; part < perPicture && written > 0; part++) {
              double share = part / (double) perPicture;
              addWeighted(before, 1 - share, picture, share, 0, between);
              write(writer, between, grain, random, written++ / fps);
            }
            picture.copyTo(before);
            write(writer, picture, grain, random, written++ / fps);
          }
        }
      }
    }
  }

  /** One large picture of grain; each frame takes another part of it, as drawing it is slow. */
  private Mat grain(int width, int height) {
    Mat grain = new Mat(height + SHIFT_PX, width + SHIFT_PX, CV_8UC3);
    try (Mat mean = new Mat(3, 1, CV_64F, new Scalar(2 * noise));
        Mat spread = new Mat(3, 1, CV_64F, new Scalar(noise))) {
      randn(grain, mean, spread);
    }
    return grain;
  }

  private void write(ClipWriter writer, Mat picture, Mat grain, Random random, double timeS)
      throws IOException {
    if (noise > 0) {
      Rect part =
          new Rect(
              random.nextInt(SHIFT_PX), random.nextInt(SHIFT_PX), picture.cols(), picture.rows());
      try (Mat here = new Mat(grain, part)) {
        add(picture, here, picture);
      }
    }
    writer.write(picture, timeS);
  }

  private static Clip open(Path file) {
    return ClipReader.standard()
        .open(file, ClipOptions.defaults())
        .fold(
            opened -> opened.clip(),
            refused -> {
              throw new AssertionError(refused.toString());
            });
  }
}
