package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;
import static org.bytedeco.ffmpeg.global.avutil.AV_PIX_FMT_YUV420P;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_alloc;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_free;
import static org.bytedeco.ffmpeg.global.avutil.av_frame_get_buffer;

import java.util.Random;
import org.bytedeco.ffmpeg.avutil.AVFrame;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.vision.library.VideoLibraries;

final class PictureConverterTest {
  private static final int HEIGHT = 50;

  private final AVFrame picture = av_frame_alloc();

  @BeforeAll
  static void load() {
    VideoLibraries.load();
  }

  @AfterEach
  void free() {
    av_frame_free(picture);
  }

  /** Noise, so that every pixel counts. */
  private void draw(int width) {
    picture.width(width);
    picture.height(HEIGHT);
    picture.format(AV_PIX_FMT_YUV420P);
    av_frame_get_buffer(picture, 0);
    Random random = new Random(1);
    for (int plane = 0; plane < 3; plane++) {
      byte[] bytes = new byte[picture.linesize(plane) * (plane == 0 ? HEIGHT : (HEIGHT + 1) / 2)];
      random.nextBytes(bytes);
      picture.data(plane).put(bytes);
    }
  }

  private void convert(int width, Orientation orientation, Mat image) {
    try (PictureConverter converter = new PictureConverter(width, HEIGHT, orientation)) {
      converter.convert(picture, image);
    }
  }

  private static void assertSame(Mat a, Mat b) {
    assertThat(a.rows()).isEqualTo(b.rows());
    assertThat(a.cols()).isEqualTo(b.cols());
    assertThat(opencv_core.norm(a, b)).isZero();
  }

  /** Wide rows are written where they belong at once, others by way of a roomier picture. */
  @ParameterizedTest
  @ValueSource(ints = {64, 128, 192, 100, 90})
  void aPictureIsTheSameByWhicheverWay(int width) {
    draw(width);
    Mat straight = new Mat();
    convert(width, Orientation.UPRIGHT, straight);
    Mat turned = new Mat();
    convert(width, Orientation.UPRIGHT.turnedMore(2), turned);
    Mat back = new Mat();
    opencv_core.rotate(turned, back, opencv_core.ROTATE_180);
    assertSame(straight, back);
  }

  @Test
  void nothingIsWrittenBeyondTheRowToSpare() {
    draw(64);
    Mat memory = new Mat(HEIGHT + 2, 64, opencv_core.CV_8UC3, new Scalar(7, 7, 7, 7));
    Mat image = memory.rowRange(0, HEIGHT);
    convert(64, Orientation.UPRIGHT, image);
    assertThat(image.data().address()).as("in place").isEqualTo(memory.data().address());
    Mat guard = memory.rowRange(HEIGHT + 1, HEIGHT + 2);
    assertSame(guard, new Mat(1, 64, opencv_core.CV_8UC3, new Scalar(7, 7, 7, 7)));
  }

  @Test
  void aPictureWithoutRoomIsMadeAnewAndThenUsedAgain() {
    draw(64);
    Mat image = new Mat(HEIGHT, 64, opencv_core.CV_8UC3);
    long tight = image.data().address();
    convert(64, Orientation.UPRIGHT, image);
    assertThat(image.data().address()).isNotEqualTo(tight);
    assertThat(image.isContinuous()).isTrue();
    long roomy = image.data().address();
    convert(64, Orientation.UPRIGHT, image);
    assertThat(image.data().address()).isEqualTo(roomy);
  }
}
