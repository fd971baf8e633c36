package shinline.vision.clip;

import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUV420P;
import static org.bytedeco.opencv.global.opencv_core.CV_8UC3;
import static org.bytedeco.opencv.global.opencv_imgcodecs.imencode;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Objects;
import java.util.Random;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.OpenCVFrameConverter;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Scalar;

/** Films made for the tests, and damage done to them. */
final class TestFilm {
  static final Scalar RED = new Scalar(0, 0, 255, 0);
  static final Scalar GREEN = new Scalar(0, 255, 0, 0);
  static final Scalar BLUE = new Scalar(255, 0, 0, 0);
  static final Scalar WHITE = new Scalar(255, 255, 255, 0);

  /** 16.16 fixed-point one of the track header's matrix. */
  private static final int ONE = 1 << 16;

  private TestFilm() {}

  /** Quarters: red, green above; blue, white below. */
  static Mat quarters(int width, int height) {
    Mat image = new Mat(height, width, CV_8UC3);
    int w = width / 2;
    int h = height / 2;
    new Mat(image, new Rect(0, 0, w, h)).put(RED);
    new Mat(image, new Rect(w, 0, width - w, h)).put(GREEN);
    new Mat(image, new Rect(0, h, w, height - h)).put(BLUE);
    new Mat(image, new Rect(w, h, width - w, height - h)).put(WHITE);
    return image;
  }

  /** Smooth shapes that move with {@code n}, so that every picture costs bytes and differs. */
  static Mat moving(int width, int height, int n) {
    Random random = new Random(7L * n + 1);
    Mat image = new Mat(height, width, CV_8UC3, new Scalar(90, 110, 120, 0));
    for (int i = 0; i < 12; i++) {
      int x = random.nextInt(width - width / 4);
      int y = random.nextInt(height - height / 4);
      Scalar colour = new Scalar(random.nextInt(256), random.nextInt(256), random.nextInt(256), 0);
      new Mat(image, new Rect(x, y, width / 4, height / 4)).put(colour);
    }
    return image;
  }

  /** A picture as bytes, without loss, to be compared. */
  static byte[] png(Mat image) {
    try (BytePointer bytes = new BytePointer()) {
      imencode(".png", image, bytes);
      byte[] copy = new byte[(int) bytes.limit()];
      bytes.get(copy);
      return copy;
    }
  }

  static ClipWriter writer(Path file, int width, int height) {
    return ClipWriter.open(file, width, height, 30)
        .fold(
            WriterOpening.Ready::writer,
            refused -> {
              throw new AssertionError(refused.toString());
            });
  }

  static Path quarters(Path file, int width, int height, int frames) throws IOException {
    try (ClipWriter writer = writer(file, width, height);
        Mat image = quarters(width, height)) {
      for (int n = 0; n < frames; n++) {
        writer.write(image, n / 30.0);
      }
    }
    return file;
  }

  static Path moving(Path file, double... times) throws IOException {
    try (ClipWriter writer = writer(file, 160, 120)) {
      for (int n = 0; n < times.length; n++) {
        try (Mat image = moving(160, 120, n)) {
          writer.write(image, times[n]);
        }
      }
    }
    return file;
  }

  static double[] evenTimes(int frames) {
    double[] times = new double[frames];
    for (int n = 0; n < frames; n++) {
      times[n] = n / 30.0;
    }
    return times;
  }

  /** A mov written by JavaCV's recorder, with pixels that are {@code pixelAspect} times as wide. */
  static Path wide(Path file, int width, int height, double pixelAspect) throws IOException {
    try (FFmpegFrameRecorder recorder = new FFmpegFrameRecorder(file.toString(), width, height, 0);
        OpenCVFrameConverter.ToMat converter = new OpenCVFrameConverter.ToMat();
        Mat image = quarters(width, height)) {
      recorder.setFormat("mov");
      recorder.setVideoCodecName("libopenh264");
      recorder.setPixelFormat(AV_PIX_FMT_YUV420P);
      recorder.setFrameRate(30);
      recorder.setAspectRatio(pixelAspect);
      recorder.start();
      for (int n = 0; n < 6; n++) {
        recorder.record(converter.convert(image));
      }
    }
    return file;
  }

  static Path fixture(String name) {
    URL url = Objects.requireNonNull(TestFilm.class.getResource("fixtures/" + name), name);
    try {
      return Path.of(url.toURI());
    } catch (URISyntaxException e) {
      throw new AssertionError(e);
    }
  }

  /** Writes the display matrix for a clockwise turn into the track header. */
  static Path turned(Path film, int clockwiseDeg) {
    int cos = (int) Math.round(Math.cos(Math.toRadians(clockwiseDeg)));
    int sin = (int) Math.round(Math.sin(Math.toRadians(clockwiseDeg)));
    return withMatrix(film, cos, sin, -sin, cos);
  }

  static Path withMatrix(Path film, int a, int b, int c, int d) {
    byte[] bytes = bytes(film);
    // Track header version 0: type, flags, five times and numbers, reserved, layer and volume.
    int matrix = find(bytes, "tkhd") + 4 + 4 + 20 + 8 + 8;
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    buffer.putInt(matrix, a * ONE).putInt(matrix + 4, b * ONE);
    buffer.putInt(matrix + 12, c * ONE).putInt(matrix + 16, d * ONE);
    return write(film, bytes);
  }

  /** Overwrites a part of the film data, given as shares of it, with noise. */
  static Path damaged(Path film, double from, double to) {
    byte[] bytes = bytes(film);
    int data = find(bytes, "mdat") + 4;
    int length = bytes.length - data;
    Random random = new Random(1);
    for (int i = data + (int) (from * length); i < data + (int) (to * length); i++) {
      bytes[i] = (byte) random.nextInt(256);
    }
    return write(film, bytes);
  }

  /**
   * Overwrites the insides of the slices that nothing refers to with noise; of an H.264 film
   * without sound, whose units have lengths of four bytes.
   *
   * @param but so many of them, the first ones, stay whole
   * @return how many were damaged
   */
  static int damagedUnreferenced(Path film, int but) {
    byte[] bytes = bytes(film);
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    int type = find(bytes, "mdat");
    int end = type - 4 + buffer.getInt(type - 4);
    Random random = new Random(1);
    int found = 0;
    for (int at = type + 4; at < end; at += 4 + buffer.getInt(at)) {
      // Its mark 0 and its type 1, a slice that is no key picture's.
      if (bytes[at + 4] == 1 && ++found > but) {
        for (int i = at + 5; i < at + 4 + buffer.getInt(at); i++) {
          bytes[i] = (byte) random.nextInt(256);
        }
      }
    }
    write(film, bytes);
    return Math.max(0, found - but);
  }

  static Path cut(Path film, Path to, double share) {
    byte[] bytes = bytes(film);
    return write(to, Arrays.copyOf(bytes, (int) (bytes.length * share)));
  }

  private static int find(byte[] bytes, String type) {
    int at = new String(bytes, StandardCharsets.ISO_8859_1).indexOf(type);
    if (at < 0) {
      throw new AssertionError("no box " + type);
    }
    return at;
  }

  private static byte[] bytes(Path file) {
    try {
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static Path write(Path file, byte[] bytes) {
    try {
      return Files.write(file, bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
