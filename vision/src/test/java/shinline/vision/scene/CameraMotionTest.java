package shinline.vision.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.bytedeco.javacpp.indexer.DoubleIndexer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Point;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.bytedeco.opencv.opencv_core.Size;
import org.junit.jupiter.api.Test;

class CameraMotionTest {
  private static final int WIDTH = 960;
  private static final int HEIGHT = 540;

  /** Half a pixel at this size is 2 mm on an athlete who fills the picture. */
  private static final double RESIDUAL_PX = 0.5;

  private static final PersonBox ATHLETE = new PersonBox(400, 60, 160, 420);

  private final CameraMotion motion = new CameraMotion();

  /** A wall with boxes of many greys. */
  private static Mat wall() {
    Random random = new Random(7);
    Mat wall = new Mat(HEIGHT, WIDTH, opencv_core.CV_8UC3, new Scalar(170, 175, 180, 0));
    for (int i = 0; i < 160; i++) {
      int grey = 30 + random.nextInt(200);
      opencv_imgproc.rectangle(
          wall,
          new Rect(
              random.nextInt(WIDTH),
              random.nextInt(HEIGHT),
              8 + random.nextInt(60),
              8 + random.nextInt(60)),
          new Scalar(grey, grey, grey, 0),
          opencv_imgproc.FILLED,
          opencv_imgproc.LINE_8,
          0);
    }
    opencv_imgproc.GaussianBlur(wall, wall, new Size(5, 5), 1);
    return wall;
  }

  /** A spotted athlete who goes up and down inside the box. */
  private static void athlete(Mat picture, int frame) {
    int drop = (int) Math.round(60 * (1 - Math.cos(frame * 0.3)));
    Random random = new Random(3);
    for (int i = 0; i < 60; i++) {
      opencv_imgproc.circle(
          picture,
          new Point(410 + random.nextInt(140), 70 + drop + random.nextInt(270)),
          12,
          new Scalar(random.nextInt(256), random.nextInt(256), random.nextInt(256), 0),
          opencv_imgproc.FILLED,
          opencv_imgproc.LINE_AA,
          0);
    }
  }

  private static void noise(Mat picture, int seed) {
    try (Mat wide = new Mat();
        Mat noise = new Mat(HEIGHT, WIDTH, opencv_core.CV_16SC3);
        Mat mean = new Mat(1, 1, opencv_core.CV_64F, new Scalar(0));
        Mat deviation = new Mat(1, 1, opencv_core.CV_64F, new Scalar(4))) {
      opencv_core.setRNGSeed(seed);
      opencv_core.randn(noise, mean, deviation);
      picture.convertTo(wide, opencv_core.CV_16SC3);
      opencv_core.add(wide, noise, wide);
      wide.convertTo(picture, opencv_core.CV_8UC3);
    }
  }

  private static Similarity shake(int frame) {
    double turn = Math.toRadians(0.8 * Math.sin(frame * 0.21));
    double zoom = 1 + 0.006 * Math.sin(frame * 0.13);
    double a = zoom * Math.cos(turn);
    double b = zoom * Math.sin(turn);
    double cx = (WIDTH - 1) / 2.0;
    double cy = (HEIGHT - 1) / 2.0;
    return new Similarity(
        a,
        b,
        cx - a * cx + b * cy + 9 * Math.sin(frame * 0.25),
        cy - b * cx - a * cy + 6 * Math.sin(frame * 0.33));
  }

  private static Mat moved(Mat picture, Similarity move) {
    Mat moved = new Mat();
    try (Mat matrix = new Mat(2, 3, opencv_core.CV_64F)) {
      try (DoubleIndexer m = matrix.createIndexer()) {
        m.put(0, 0, move.a());
        m.put(0, 1, -move.b());
        m.put(0, 2, move.tx());
        m.put(1, 0, move.b());
        m.put(1, 1, move.a());
        m.put(1, 2, move.ty());
      }
      opencv_imgproc.warpAffine(
          picture,
          moved,
          matrix,
          picture.size(),
          opencv_imgproc.INTER_CUBIC,
          opencv_core.BORDER_REFLECT,
          new Scalar(0));
    }
    return moved;
  }

  private static double worstGap(Similarity found, Similarity truth) {
    double worst = 0;
    for (int i = 0; i < 9; i++) {
      double x = WIDTH * (0.15 + 0.35 * (i % 3));
      double y = HEIGHT * (0.15 + 0.35 * (i / 3));
      worst =
          Math.max(worst, Math.hypot(found.x(x, y) - truth.x(x, y), found.y(x, y) - truth.y(x, y)));
    }
    return worst;
  }

  @Test
  void aShakenCameraIsFollowedToHalfAPixel() {
    Mat wall = wall();
    List<Similarity> truth = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      Similarity shake = shake(i);
      Mat frame = wall.clone();
      athlete(frame, i);
      frame = moved(frame, shake);
      noise(frame, i);
      motion.add(frame, List.of(ATHLETE));
      truth.add(shake.inverse());
    }

    List<Similarity> found = motion.toMiddleView();

    assertThat(motion.steadiness()).isInstanceOf(Steadiness.Moving.class);
    for (int i = 0; i < found.size(); i++) {
      // shake(0) is no move, so the first look's move is the one from there to the middle view.
      assertThat(worstGap(found.get(i), found.get(0).after(truth.get(i))))
          .as("frame " + i)
          .isLessThan(RESIDUAL_PX);
    }
  }

  @Test
  void theMiddleViewIsAsLevelAsTheHandIsOnTheWhole() {
    Mat wall = wall();
    double startsTurnedDeg = 1.5;
    for (int i = 0; i < 30; i++) {
      double turn = Math.toRadians(i < 3 ? startsTurnedDeg : 0.4 * Math.sin(i * 0.9));
      double cx = (WIDTH - 1) / 2.0;
      double cy = (HEIGHT - 1) / 2.0;
      double a = Math.cos(turn);
      double b = Math.sin(turn);
      Similarity shake = new Similarity(a, b, cx - a * cx + b * cy, cy - b * cx - a * cy);
      motion.add(moved(wall, shake), List.of());
    }

    // The camera's own turn at the first look, undone: the middle view is level to a tenth.
    assertThat(motion.toMiddleView().get(0).rotationDeg()).isCloseTo(-startsTurnedDeg, within(0.1));
  }

  @Test
  void aTripodAddsNothing() {
    Mat wall = wall();
    for (int i = 0; i < 25; i++) {
      Mat frame = wall.clone();
      athlete(frame, i);
      noise(frame, i);
      motion.add(frame, List.of(ATHLETE));
    }

    assertThat(motion.steadiness()).isInstanceOf(Steadiness.Steady.class);
    assertThat(motion.toMiddleView()).hasSize(25).containsOnly(Similarity.IDENTITY);
  }

  @Test
  void aPanLeavesTheFirstViewAndIsStillFollowed() {
    Mat wide = new Mat();
    opencv_imgproc.resize(wall(), wide, new Size(WIDTH * 2, HEIGHT * 2));
    double shiftPerFrame = 12;
    for (int i = 0; i < 60; i++) {
      Mat view = new Mat(wide, new Rect((int) (i * shiftPerFrame), 200, WIDTH, HEIGHT)).clone();
      motion.add(view, List.of());
    }

    List<Similarity> found = motion.toMiddleView();

    Similarity truth = new Similarity(1, 0, 59 * shiftPerFrame, 0);
    // Each new key frame adds its own error; two or three are taken here.
    assertThat(worstGap(found.get(59), found.get(0).after(truth))).isLessThan(4 * RESIDUAL_PX);
  }

  @Test
  void aBareWallIsUnsure() {
    for (int i = 0; i < 10; i++) {
      Mat frame = new Mat(HEIGHT, WIDTH, opencv_core.CV_8UC3, new Scalar(170, 175, 180, 0));
      athlete(frame, i);
      motion.add(frame, List.of(ATHLETE));
    }

    assertThat(motion.steadiness()).isInstanceOf(Steadiness.Unsure.class);
    assertThat(motion.toMiddleView()).containsOnly(Similarity.IDENTITY);
  }

  @Test
  void aLostFrameTakesItsMoveFromItsNeighbours() {
    Mat wall = wall();
    for (int i = 0; i < 21; i++) {
      Mat frame = moved(wall, shake(i));
      if (i == 10) {
        frame = new Mat(HEIGHT, WIDTH, opencv_core.CV_8UC3, new Scalar(20, 20, 20, 0));
      }
      motion.add(frame, List.of());
    }

    Similarity middle = shake(9).inverse().toward(shake(11).inverse(), 0.5);
    List<Similarity> found = motion.toMiddleView();
    assertThat(worstGap(found.get(10), found.get(0).after(middle))).isLessThan(RESIDUAL_PX);
  }

  @Test
  void twoRunsGiveTheSameNumbers() {
    CameraMotion again = new CameraMotion();
    Mat wall = wall();
    for (int i = 0; i < 10; i++) {
      Mat frame = moved(wall, shake(i));
      motion.add(frame, List.of(ATHLETE));
      again.add(frame, List.of(ATHLETE));
    }

    assertThat(motion.toMiddleView()).isEqualTo(again.toMiddleView());
  }

  @Test
  void wantsFramesOfOneSize() {
    motion.add(wall(), List.of());

    assertThatThrownBy(() -> motion.add(new Mat(100, 100, opencv_core.CV_8UC3), List.of()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("100x100");
  }
}
