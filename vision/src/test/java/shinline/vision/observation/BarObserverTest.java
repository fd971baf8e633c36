package shinline.vision.observation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Point;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.junit.jupiter.api.Test;
import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PoseSighting;
import shinline.vision.pose.RegionOfInterest;

/** Drawn discs on a known path before a wall of boxes. */
class BarObserverTest {
  private static final double DISC_M = 0.45;
  private static final int LOOKS = 150;
  private static final double RATE = 15;

  /** A rim of 120 rays with a grey step each lies within a small part of a pixel. */
  private static final double PLACE_PX = 0.6;

  private static final double SIZE_SHARE = 0.015;

  /** How far hips and bar have come down at a look, pixels: a rep of 3 s after a second. */
  private static double down(int look, double most) {
    double t = look / RATE;
    return t < 1 ? 0 : most * (1 - Math.cos(2 * Math.PI * (t - 1) / 3)) / 2;
  }

  /** An athlete 370 px from nose to foot whose hips and shoulders come down. */
  private static PeopleInView athlete(double downPx) {
    Map<BodyLandmark, Keypoint> points = new EnumMap<>(BodyLandmark.class);
    for (BodyLandmark landmark : BodyLandmark.values()) {
      double row =
          switch (landmark) {
            case LEFT_HIP, RIGHT_HIP -> 270 + downPx;
            case LEFT_KNEE, RIGHT_KNEE -> 370;
            case LEFT_ANKLE, RIGHT_ANKLE, LEFT_HEEL, RIGHT_HEEL -> 455;
            case LEFT_FOOT_INDEX, RIGHT_FOOT_INDEX -> 470;
            case LEFT_SHOULDER, RIGHT_SHOULDER -> 150 + downPx;
            default -> 110 + downPx;
          };
      points.put(landmark, new Keypoint(300, row, 0, 1, 1));
    }
    return PeopleInView.alone(
        new PoseSighting.Found(points, 1, new RegionOfInterest(300, 300, 500, 0)));
  }

  private static Mat wall() {
    Random random = new Random(7);
    Mat picture = new Mat(540, 960, opencv_core.CV_8UC3, new Scalar(180, 185, 190, 0));
    for (int i = 0; i < 40; i++) {
      int grey = 130 + random.nextInt(100);
      opencv_imgproc.rectangle(
          picture,
          new Rect(random.nextInt(900), random.nextInt(500), 60, 40),
          new Scalar(grey, grey, grey, 0),
          opencv_imgproc.FILLED,
          opencv_imgproc.LINE_8,
          0);
    }
    return picture;
  }

  private static void disc(Mat picture, double x, double y, double diameter, Scalar colour) {
    opencv_imgproc.circle(
        picture,
        new Point((int) Math.round(16 * x), (int) Math.round(16 * y)),
        (int) Math.round(16 * (diameter - 1) / 2),
        colour,
        opencv_imgproc.FILLED,
        opencv_imgproc.LINE_AA,
        4);
  }

  private static final Scalar DARK = new Scalar(90, 40, 30, 0);
  private static final Scalar RED = new Scalar(40, 30, 170, 0);

  /** Draws a look. */
  private interface Painter {
    void paint(int look, Mat picture);
  }

  /** Is shown a look. */
  private interface Watcher {
    void watch(int look, Mat picture);
  }

  /** Shows all looks, each painted on the wall. */
  private static void show(Painter painter, Watcher watcher) {
    try (Mat wall = wall();
        Mat picture = new Mat()) {
      for (int look = 0; look < LOOKS; look++) {
        wall.copyTo(picture);
        painter.paint(look, picture);
        watcher.watch(look, picture);
      }
    }
  }

  private static List<BarSighting> watch(double discM, double hipsDown, Painter painter) {
    try (BarObserver observer = new BarObserver(discM)) {
      show(
          painter,
          (look, picture) ->
              observer.look(2 * look, look / RATE, picture, athlete(down(look, hipsDown))));
      return observer.sightings();
    }
  }

  private static void bar(int look, Mat picture) {
    disc(picture, barX(look), barY(look), 115, DARK);
  }

  private static double barX(int look) {
    return 310 + 0.1 * down(look, 110);
  }

  private static double barY(int look) {
    return 130.4 + down(look, 130);
  }

  @Test
  void theDiscOnTheBackIsFollowedAlongItsPath() {
    List<BarSighting> seen = watch(DISC_M, 110, BarObserverTest::bar);
    assertThat(seen).hasSizeGreaterThan(LOOKS - 10);
    for (BarSighting s : seen) {
      int look = s.frame() / 2;
      assertThat(s.timeS()).isEqualTo(look / RATE);
      assertThat(s.centreX()).isCloseTo(barX(look), within(PLACE_PX));
      assertThat(s.centreY()).isCloseTo(barY(look), within(PLACE_PX));
      assertThat(s.diameterPx()).isCloseTo(115, within(115 * SIZE_SHARE));
      assertThat(s.roundness()).isGreaterThan(0.97);
    }
  }

  @Test
  void aDiscThatHardlyStandsOutButByItsColourIsFoundWithinHalfASecond() {
    // 0.299 · 214 + 0.587 · 74 + 0.114 · 54 = 114, the weights of Rec. ITU-R BT.601
    Scalar wallGrey = new Scalar(100, 100, 100, 0);
    Scalar asBright = new Scalar(54, 74, 214, 0);
    List<BarSighting> seen =
        watch(
            DISC_M,
            110,
            (look, picture) -> {
              picture.put(wallGrey);
              disc(picture, barX(look), barY(look), 115, asBright);
            });
    assertThat(seen).hasSizeGreaterThan(LOOKS - 10);
    assertThat(seen.get(0).timeS()).isPositive().isLessThan(0.5);
  }

  @Test
  void betweenTwoLooksItIsFollowedAsWell() {
    try (BarObserver observer = new BarObserver(DISC_M)) {
      show(
          BarObserverTest::bar,
          (look, picture) -> {
            if (look % 2 == 1) {
              observer.between(look, look / RATE, picture);
            } else {
              observer.look(look, look / RATE, picture, athlete(down(look, 110)));
            }
          });
      assertThat(observer.sightings()).hasSizeGreaterThan(LOOKS - 10);
      assertThat(observer.sightings())
          .allSatisfy(s -> assertThat(s.centreY()).isCloseTo(barY(s.frame()), within(PLACE_PX)));
    }
  }

  @Test
  void aSmallerDiscBeforeALargerOneLeavesTheLargerOne() {
    List<BarSighting> seen =
        watch(
            DISC_M,
            40,
            (look, p) -> {
              double y = 130 + down(look, 48);
              disc(p, 310, y, 115, DARK);
              disc(p, 311, y + 1, 94, RED);
            });
    assertThat(seen).hasSizeGreaterThan(LOOKS - 10);
    assertThat(seen)
        .allSatisfy(s -> assertThat(s.diameterPx()).isCloseTo(115, within(115 * SIZE_SHARE)));
  }

  @Test
  void aDiscThatStaysIsAThingOfTheRoom() {
    assertThat(watch(DISC_M, 110, (look, p) -> disc(p, 310, 130, 115, DARK))).isEmpty();
  }

  @Test
  void theBarIsFoundBesideADiscThatStays() {
    List<BarSighting> seen =
        watch(
            DISC_M,
            110,
            (look, p) -> {
              disc(p, 420, 150, 115, RED);
              disc(p, barX(look) - 60, barY(look), 115, DARK);
            });
    assertThat(seen).isNotEmpty();
    assertThat(seen)
        .allSatisfy(s -> assertThat(s.centreY()).isCloseTo(barY(s.frame() / 2), within(PLACE_PX)));
  }

  @Test
  void weightsInTheHandsAreNoBar() {
    assertThat(
            watch(
                DISC_M,
                110,
                (look, p) -> {
                  disc(p, 300, 290 + down(look, 110), 50, DARK);
                  disc(p, 300, 120 + down(look, 110), 60, RED);
                }))
        .isEmpty();
  }

  @Test
  void aDiscThatSwingsByItselfIsNotOnTheBack() {
    assertThat(
            watch(
                DISC_M,
                110,
                (look, p) -> disc(p, 310, 130 + 40 * Math.sin(look / RATE * 5.1), 115, DARK)))
        .isEmpty();
  }

  @Test
  void aDiscHiddenForAWhileIsFoundAgain() {
    List<BarSighting> seen =
        watch(
            DISC_M,
            110,
            (look, p) -> {
              if (look < 70 || look > 95) {
                disc(p, barX(look), barY(look), 115, DARK);
              }
            });
    assertThat(seen).noneMatch(s -> s.frame() / 2 >= 70 && s.frame() / 2 <= 95);
    assertThat(seen).anyMatch(s -> s.frame() / 2 < 70);
    assertThat(seen).anyMatch(s -> s.frame() / 2 > 110);
  }

  @Test
  void somebodyElseHasNoBar() {
    try (BarObserver observer = new BarObserver(DISC_M);
        Mat wall = wall()) {
      show(
          BarObserverTest::bar,
          (look, picture) -> observer.look(look, look / RATE, picture, athlete(down(look, 110))));
      PoseSighting other = athlete(0).ofMover();
      observer.look(
          LOOKS,
          LOOKS / RATE,
          wall,
          new PeopleInView(
              1, Map.of(1, other), List.of(), List.of(), PeopleInView.Company.STANDING_BY));
      assertThat(observer.sightings()).isEmpty();
    }
  }

  @Test
  void noDiscNoBar() {
    assertThat(watch(DISC_M, 110, (look, p) -> {})).isEmpty();
  }
}
