package shinline.vision.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Point;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.bytedeco.opencv.opencv_core.Size;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DiscFinderTest {
  /** One in a hundred: as good as a height given to the nearest 2 cm. */
  private static final double SIZE_TOLERANCE = 0.01;

  /** Of a picture with twice the pixels and more the rim itself tells more. */
  private static final double SIZE_OF_LARGE = 0.004;

  private static final double X = 470.3;
  private static final double Y = 300.6;
  private static final DiscSearch SEARCH = new DiscSearch(475, 295, 40, 90, 260);

  private final DiscFinder finder = new DiscFinder(DiscFinderParameters.defaults());

  /** A wall with shelves and boxes. */
  private static Mat clutter(int seed) {
    Random random = new Random(seed);
    Mat picture = new Mat(540, 960, opencv_core.CV_8UC3, new Scalar(180, 185, 190, 0));
    for (int i = 0; i < 60; i++) {
      int grey = 110 + random.nextInt(130);
      opencv_imgproc.rectangle(
          picture,
          new Rect(
              random.nextInt(960),
              random.nextInt(540),
              10 + random.nextInt(90),
              10 + random.nextInt(90)),
          new Scalar(grey, grey, grey, 0),
          opencv_imgproc.FILLED,
          opencv_imgproc.LINE_8,
          0);
    }
    return picture;
  }

  private static void plate(
      Mat picture, double x, double y, double diameter, double roundness, int grey) {
    ellipse(picture, x, y, diameter, roundness, grey);
    ellipse(picture, x, y, 0.82 * diameter, roundness, grey + 14);
    ellipse(picture, x, y, 0.3 * diameter, roundness, 130);
    ellipse(picture, x, y, 0.11 * diameter, roundness, 30);
  }

  private static void ellipse(
      Mat picture, double x, double y, double diameter, double roundness, int grey) {
    ellipse(picture, x, y, diameter, roundness, new Scalar(grey, grey, grey, 0));
  }

  private static void ellipse(
      Mat picture, double x, double y, double diameter, double roundness, Scalar colour) {
    // drawn eight times as large, then shrunk, so that its place and size are true to a hundredth
    int scale = 8;
    int half = (int) (diameter / 2) + 4;
    int left = (int) x - half;
    int top = (int) y - half;
    int side = 2 * half + 1;
    try (Mat mask = new Mat(side * scale, side * scale, opencv_core.CV_8UC1, new Scalar(0));
        Mat small = new Mat();
        Mat spot = new Mat(picture, new Rect(left, top, side, side));
        Mat paint = new Mat(side, side, opencv_core.CV_8UC3, colour);
        Mat alpha = new Mat();
        Mat beta = new Mat()) {
      opencv_imgproc.ellipse(
          mask,
          new Point(
              (int) Math.round((x - left + 0.5) * scale - 0.5),
              (int) Math.round((y - top + 0.5) * scale - 0.5)),
          new Size(
              (int) Math.round(diameter * roundness * scale / 2),
              (int) Math.round(diameter * scale / 2)),
          20,
          0,
          360,
          new Scalar(255),
          opencv_imgproc.FILLED,
          opencv_imgproc.LINE_8,
          0);
      opencv_imgproc.resize(mask, small, new Size(side, side), 0, 0, opencv_imgproc.INTER_AREA);
      small.convertTo(alpha, opencv_core.CV_32F, 1 / 255.0, 0);
      small.convertTo(beta, opencv_core.CV_32F, -1 / 255.0, 1);
      opencv_imgproc.blendLinear(paint, spot, alpha, beta, spot);
    }
  }

  private static void noise(Mat picture, double sigma, int seed) {
    try (Mat wide = new Mat();
        Mat noise = new Mat(picture.rows(), picture.cols(), opencv_core.CV_16SC3);
        Mat mean = new Mat(1, 1, opencv_core.CV_64F, new Scalar(0));
        Mat deviation = new Mat(1, 1, opencv_core.CV_64F, new Scalar(sigma))) {
      opencv_core.setRNGSeed(seed);
      opencv_core.randn(noise, mean, deviation);
      picture.convertTo(wide, opencv_core.CV_16SC3);
      opencv_core.add(wide, noise, wide);
      wide.convertTo(picture, opencv_core.CV_8UC3);
    }
  }

  private static DiscFinding.Found found(DiscFinding finding) {
    assertThat(finding).isInstanceOf(DiscFinding.Found.class);
    return (DiscFinding.Found) finding;
  }

  @ParameterizedTest(name = "diameter {0}, blur {1}, noise {2}")
  @CsvSource({
    "120, 0.6, 0",
    "120, 1.5, 6",
    "163, 1, 3",
    "163, 2.5, 10",
    "240, 0.6, 3",
    "240, 3, 12"
  })
  void measuresAPlateToOneInAHundred(double diameter, double blur, double noise) {
    Mat picture = clutter(5);
    plate(picture, X, Y, diameter, 1, 40);
    opencv_imgproc.GaussianBlur(picture, picture, new Size(0, 0), blur);
    noise(picture, noise, 11);

    DiscFinding.Found found = found(finder.find(picture, SEARCH));

    assertThat(found.diameterPx()).isCloseTo(diameter, within(SIZE_TOLERANCE * diameter));
    assertThat(found.centreX()).isCloseTo(X, within(SIZE_TOLERANCE * diameter));
    assertThat(found.centreY()).isCloseTo(Y, within(SIZE_TOLERANCE * diameter));
    assertThat(Math.abs(found.diameterPx() - diameter)).isLessThanOrEqualTo(found.plusMinusPx());
  }

  @ParameterizedTest(name = "{0} times as large, diameter {1}")
  @CsvSource({"2, 240, 3", "2, 480, 6", "4, 500, 0", "4, 1000, 8"})
  void ofALargePictureTheRimIsMeasuredAsItIs(int times, double diameter, double noise) {
    Mat picture = new Mat();
    opencv_imgproc.resize(
        clutter(6), picture, new Size(960 * times, 540 * times), 0, 0, opencv_imgproc.INTER_AREA);
    plate(picture, times * X, times * Y, diameter, 1, 40);
    opencv_imgproc.GaussianBlur(picture, picture, new Size(0, 0), 0.5 * times);
    noise(picture, noise, 13);
    DiscSearch search =
        new DiscSearch(475 * times, 295 * times, 80 * times, 90 * times, 260 * times);

    DiscFinding.Found found = found(finder.find(picture, search));

    double withinPx = SIZE_OF_LARGE * diameter;
    assertThat(found.diameterPx()).isCloseTo(diameter, within(withinPx));
    assertThat(found.centreX()).isCloseTo(times * X, within(withinPx));
    assertThat(found.centreY()).isCloseTo(times * Y, within(withinPx));
    assertThat(Math.abs(found.diameterPx() - diameter)).isLessThanOrEqualTo(found.plusMinusPx());
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.97, 0.93, 0.88})
  void ofATurnedPlateTheLongerAxisCounts(double roundness) {
    Mat picture = clutter(2);
    plate(picture, X, Y, 170, roundness, 40);
    opencv_imgproc.GaussianBlur(picture, picture, new Size(0, 0), 1);

    DiscFinding.Found found = found(finder.find(picture, SEARCH));

    assertThat(found.diameterPx()).isCloseTo(170, within(SIZE_TOLERANCE * 170));
    assertThat(found.roundness()).isCloseTo(roundness, within(0.02));
  }

  @Test
  void aRedPlateAcrossWallAndFloorIsReadByItsColour() {
    // As grey, the lower half is brighter than the floor and the upper half darker than the wall.
    Mat picture = new Mat(540, 960, opencv_core.CV_8UC3, new Scalar(185, 185, 185, 0));
    opencv_imgproc.rectangle(
        picture,
        new Rect(0, 300, 960, 240),
        new Scalar(40, 40, 40, 0),
        opencv_imgproc.FILLED,
        opencv_imgproc.LINE_8,
        0);
    ellipse(picture, X, Y, 160, 1, new Scalar(40, 40, 190, 0));

    DiscFinding.Found found = found(finder.find(picture, SEARCH));

    assertThat(found.diameterPx()).isCloseTo(160, within(SIZE_TOLERANCE * 160));
  }

  @Test
  void aPlateTurnedTooFarIsRefused() {
    Mat picture = clutter(2);
    plate(picture, X, Y, 170, 0.6, 40);

    assertThat(finder.find(picture, SEARCH)).isInstanceOf(DiscFinding.NotFound.class);
  }

  @Test
  void anUprightInFrontHidesPartOfTheRim() {
    Mat picture = clutter(3);
    plate(picture, X, Y, 180, 1, 40);
    opencv_imgproc.rectangle(
        picture,
        new Rect(430, 100, 35, 400),
        new Scalar(90, 90, 95, 0),
        opencv_imgproc.FILLED,
        opencv_imgproc.LINE_8,
        0);
    opencv_imgproc.GaussianBlur(picture, picture, new Size(0, 0), 1);
    noise(picture, 4, 2);

    DiscFinding.Found found = found(finder.find(picture, SEARCH));

    assertThat(found.diameterPx()).isCloseTo(180, within(SIZE_TOLERANCE * 180));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void clutterAndNoiseAreNoDisc(int seed) {
    Mat picture = clutter(seed);
    noise(picture, 12, seed);

    assertThat(finder.find(picture, SEARCH)).isInstanceOf(DiscFinding.NotFound.class);
  }

  @Test
  void aQuarterOfARimIsNotEnough() {
    Mat picture = new Mat(540, 960, opencv_core.CV_8UC3, new Scalar(180, 185, 190, 0));
    plate(picture, X, Y, 180, 1, 40);
    opencv_imgproc.rectangle(
        picture,
        new Rect(370, 200, 210, 150),
        new Scalar(180, 185, 190, 0),
        opencv_imgproc.FILLED,
        opencv_imgproc.LINE_8,
        0);

    assertThat(finder.find(picture, SEARCH)).isInstanceOf(DiscFinding.NotFound.class);
  }

  @Test
  void twoPlatesOfDifferentSizeAskTheCoachToPoint() {
    Mat picture = new Mat(540, 960, opencv_core.CV_8UC3, new Scalar(180, 185, 190, 0));
    plate(picture, 300, 300, 170, 1, 40);
    plate(picture, 600, 300, 120, 1, 40);

    DiscFinding either = finder.find(picture, new DiscSearch(450, 300, 220, 90, 260));
    DiscFinding pointed = finder.find(picture, new DiscSearch(600, 300, 40, 90, 260));

    assertThat(either)
        .isInstanceOfSatisfying(
            DiscFinding.NotFound.class,
            n -> assertThat(n.reason()).isInstanceOf(NoDisc.TwoSizes.class));
    assertThat(found(pointed).diameterPx()).isCloseTo(120, within(SIZE_TOLERANCE * 120));
  }

  @Test
  void aPlaceOutsideThePictureIsSaidSo() {
    DiscFinding finding = finder.find(clutter(1), new DiscSearch(5000, 300, 40, 90, 260));

    assertThat(finding).isEqualTo(new DiscFinding.NotFound(NoDiscReason.OUTSIDE_PICTURE));
  }

  @Test
  void aSearchMustHaveARange() {
    assertThatThrownBy(() -> new DiscSearch(0, 0, 10, 90, 80))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("px");
  }
}
