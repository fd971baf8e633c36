package shinline.cli.process;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.bytedeco.ffmpeg.global.avcodec;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.FFmpegFrameRecorder;
import org.bytedeco.javacv.Frame;
import org.bytedeco.javacv.OpenCVFrameConverter;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Rect;

/** Makes the small films the process tests feed to the command. */
final class Films {
  /** Where the index of the film lies. */
  enum Index {
    FIRST,
    LAST
  }

  private static final int FPS = 30;
  private static final int FRAMES_OF_ONE_REP = 160;
  private static final int BITS_PER_SECOND = 2_000_000;

  static {
    avutil.av_log_set_level(avutil.AV_LOG_ERROR);
  }

  private Films() {}

  /** The athlete of a sample clip, standing, as a picture that never moves. */
  static Mat athlete() throws IOException {
    try (FFmpegFrameGrabber grabber =
            new FFmpegFrameGrabber(
                Path.of("..", "sample-clips", "plain1-bench-shallow.mp4").toFile());
        OpenCVFrameConverter.ToMat convert = new OpenCVFrameConverter.ToMat()) {
      grabber.start();
      return convert.convert(grabber.grabImage()).clone();
    }
  }

  /** The start of a sample clip with its first rep. */
  static void oneRep(Path file) throws IOException {
    try (FFmpegFrameGrabber grabber =
        new FFmpegFrameGrabber(
            Path.of("..", "sample-clips", "plain1-bench-shallow.mp4").toFile())) {
      grabber.start();
      try (FFmpegFrameRecorder recorder =
          new FFmpegFrameRecorder(
              file.toFile(), grabber.getImageWidth(), grabber.getImageHeight())) {
        recorder.setFormat("mp4");
        recorder.setVideoCodec(avcodec.AV_CODEC_ID_MPEG4);
        recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV420P);
        recorder.setFrameRate(FPS);
        recorder.setVideoBitrate(4 * BITS_PER_SECOND);
        recorder.start();
        for (int i = 0; i < FRAMES_OF_ONE_REP; i++) {
          recorder.record(grabber.grabImage());
        }
        recorder.stop();
      }
    }
  }

  /** Two of them side by side. */
  static Mat twoAthletes() throws IOException {
    Mat one = athlete();
    Mat middle = new Mat(one, new Rect(one.cols() / 4, 0, one.cols() / 2, one.rows()));
    Mat two = new Mat();
    opencv_core.hconcat(middle, middle, two);
    return two;
  }

  /** Grey noise: a picture with nobody in it. */
  static Mat noise(int width, int height) {
    byte[] grey = new byte[3 * width * height];
    new Random(1).nextBytes(grey);
    Mat mat = new Mat(height, width, opencv_core.CV_8UC3);
    mat.data().put(grey);
    return mat;
  }

  static void still(Path file, Mat picture, int frames, Index index) throws IOException {
    try (FFmpegFrameRecorder recorder =
            new FFmpegFrameRecorder(file.toFile(), picture.cols(), picture.rows());
        OpenCVFrameConverter.ToMat convert = new OpenCVFrameConverter.ToMat()) {
      recorder.setFormat(file.toString().endsWith(".mov") ? "mov" : "mp4");
      recorder.setVideoCodec(avcodec.AV_CODEC_ID_MPEG4);
      recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV420P);
      recorder.setFrameRate(FPS);
      recorder.setVideoBitrate(BITS_PER_SECOND);
      recorder.setGopSize(10);
      if (index == Index.FIRST) {
        recorder.setOption("movflags", "faststart");
      }
      recorder.start();
      for (int i = 0; i < frames; i++) {
        recorder.record(convert.convert(picture));
      }
      recorder.stop();
    }
  }

  /** Twenty small pictures of noise in a container of choice. */
  static void as(Path file, String container, int codec) throws IOException {
    try (FFmpegFrameRecorder recorder = new FFmpegFrameRecorder(file.toFile(), 96, 64);
        OpenCVFrameConverter.ToMat convert = new OpenCVFrameConverter.ToMat()) {
      recorder.setFormat(container);
      recorder.setVideoCodec(codec);
      recorder.setPixelFormat(avutil.AV_PIX_FMT_YUV420P);
      recorder.setFrameRate(FPS);
      recorder.setGopSize(10);
      recorder.start();
      Mat picture = noise(96, 64);
      for (int i = 0; i < 20; i++) {
        recorder.record(convert.convert(picture));
      }
      recorder.stop();
    }
  }

  /** One picture again and again, at times of choice in seconds. */
  static void at(Path file, Mat picture, double... times) throws IOException {
    try (FFmpegFrameRecorder recorder =
            new FFmpegFrameRecorder(file.toFile(), picture.cols(), picture.rows());
        OpenCVFrameConverter.ToMat convert = new OpenCVFrameConverter.ToMat()) {
      // Keeps no times of its own, so that any will do.
      recorder.setVideoCodec(avcodec.AV_CODEC_ID_MJPEG);
      recorder.setPixelFormat(avutil.AV_PIX_FMT_YUVJ420P);
      recorder.setFrameRate(FPS);
      recorder.start();
      for (double time : times) {
        recorder.setTimestamp(Math.round(1e6 * time));
        recorder.record(convert.convert(picture));
      }
      recorder.stop();
    }
  }

  static void sound(Path file) throws IOException {
    try (FFmpegFrameRecorder recorder = new FFmpegFrameRecorder(file.toFile(), 1)) {
      recorder.setFormat("mp4");
      recorder.setAudioCodec(avcodec.AV_CODEC_ID_AAC);
      recorder.setSampleRate(44_100);
      recorder.start();
      for (int i = 0; i < 20; i++) {
        Frame frame = new Frame();
        frame.sampleRate = 44_100;
        frame.audioChannels = 1;
        frame.samples = new java.nio.Buffer[] {java.nio.ShortBuffer.allocate(1024)};
        recorder.record(frame);
      }
      recorder.stop();
    }
  }

  /** Keeps the first part of a file. */
  static void cut(Path file, double part) throws IOException {
    byte[] all = Files.readAllBytes(file);
    Files.write(file, java.util.Arrays.copyOf(all, (int) (part * all.length)));
  }

  /** Overwrites a stretch in the middle with noise. */
  static void damage(Path file, double from, double to) throws IOException {
    byte[] all = Files.readAllBytes(file);
    byte[] noise = new byte[(int) ((to - from) * all.length)];
    new Random(2).nextBytes(noise);
    System.arraycopy(noise, 0, all, (int) (from * all.length), noise.length);
    Files.write(file, all);
  }
}
