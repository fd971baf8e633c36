package shinline.cli.doctor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import shinline.cli.calibration.CalibrationFile;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.statistics.RobustStatistics;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipOpening;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.ClipWriter;
import shinline.vision.clip.Frame;
import shinline.vision.clip.WriterOpening;
import shinline.vision.pose.ImageFlip;
import shinline.vision.pose.PersonDetector;
import shinline.vision.pose.PoseEstimator;
import shinline.vision.pose.PoseModel;
import shinline.vision.pose.PoseTracker;
import shinline.vision.pose.RegionOfInterest;

/**
 * Times the two things that take the time of a check: the pose model on a made picture, whose
 * content makes no difference to it, and decoding of a short made clip.
 */
final class SpeedTrial {
  private static final PoseModel MODEL = PoseModel.HEAVY;
  private static final int WIDTH = 1920;
  private static final int HEIGHT = 1080;

  /** A tile of noise this large, moved on from picture to picture, fills a picture. */
  private static final int TILE = 60;

  private static final int FPS = 30;
  private static final int PICTURES = 20;
  private static final int LOOKS = 9;
  private static final double NANOS = 1e9;

  private SpeedTrial() {}

  /**
   * @return empty when the made clip cannot be written or read
   * @throws IOException when there is no room for the made clip
   */
  static Optional<ClipTime> run() throws IOException {
    Path folder = Files.createTempDirectory("shinline-doctor");
    Path clip = folder.resolve("made.mp4");
    try (Mat picture = noise(0)) {
      OptionalDouble pictureS = made(clip) ? decoding(clip) : OptionalDouble.empty();
      if (pictureS.isEmpty()) {
        return Optional.empty();
      }
      long before = System.nanoTime();
      try (PersonDetector detector = PersonDetector.open();
          PoseEstimator pose = PoseTracker.open(MODEL, detector)) {
        double loadS = since(before);
        double[] looks = looks(pose, picture);
        double median = RobustStatistics.median(looks).orElseThrow();
        return Optional.of(
            new ClipTime(
                loadS,
                median,
                pictureS.getAsDouble(),
                (quantile(looks, 0.75) - quantile(looks, 0.25)) / median,
                Runtime.getRuntime().availableProcessors(),
                CalibrationFile.shipped(MODEL).value(CalibrationKey.SAMPLING_LOOKS)
                    / CalibrationFile.shipped(MODEL).value(CalibrationKey.SAMPLING_EVERY)));
      }
    } finally {
      Files.deleteIfExists(clip);
      Files.deleteIfExists(folder);
    }
  }

  private static double quantile(double[] looks, double p) {
    return RobustStatistics.quantile(looks, p).orElseThrow();
  }

  /** Seconds of each look; the first look of all warms up and is left out. */
  private static double[] looks(PoseEstimator pose, Mat picture) {
    RegionOfInterest middle = new RegionOfInterest(WIDTH / 2.0, HEIGHT / 2.0, HEIGHT, 0);
    double[] seconds = new double[LOOKS];
    for (int i = -1; i < LOOKS; i++) {
      long before = System.nanoTime();
      pose.at(picture, middle, ImageFlip.AS_FILMED);
      if (i >= 0) {
        seconds[i] = since(before);
      }
    }
    return seconds;
  }

  private static boolean made(Path clip) throws IOException {
    WriterOpening opening = ClipWriter.open(clip, WIDTH, HEIGHT, FPS);
    if (!(opening instanceof WriterOpening.Ready ready)) {
      return false;
    }
    try (ClipWriter writer = ready.writer()) {
      for (int i = 0; i < PICTURES; i++) {
        try (Mat picture = noise(i)) {
          writer.write(picture, i / (double) FPS);
        }
      }
    }
    return true;
  }

  /** Seconds a picture, with what turns it into one. */
  private static OptionalDouble decoding(Path file) {
    ClipOpening opening = ClipReader.standard().open(file, ClipOptions.defaults());
    if (!(opening instanceof ClipOpening.Opened opened)) {
      return OptionalDouble.empty();
    }
    try (Clip clip = opened.clip()) {
      long before = System.nanoTime();
      int pictures = 0;
      for (Optional<Frame> next = clip.next(); next.isPresent(); next = clip.next()) {
        pictures++;
      }
      return pictures == 0 ? OptionalDouble.empty() : OptionalDouble.of(since(before) / pictures);
    }
  }

  /** Soft noise on grey, which moves; about as dear to decode as a gym. */
  private static Mat noise(int shift) {
    byte[] tile = new byte[TILE * TILE];
    new Random(1).nextBytes(tile);
    byte[] row = new byte[3 * WIDTH];
    Mat picture = new Mat(HEIGHT, WIDTH, opencv_core.CV_8UC3);
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        int of = tile[(y / 4 % TILE) * TILE + (x / 4 + shift) % TILE];
        Arrays.fill(row, 3 * x, 3 * x + 3, (byte) (128 + of / 4));
      }
      picture.ptr(y).put(row);
    }
    return picture;
  }

  private static double since(long before) {
    return (System.nanoTime() - before) / NANOS;
  }
}
