package shinline.vision.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import org.bytedeco.javacpp.BytePointer;
import org.bytedeco.opencv.global.opencv_core;
import org.bytedeco.opencv.global.opencv_imgcodecs;
import org.bytedeco.opencv.global.opencv_imgproc;
import org.bytedeco.opencv.opencv_core.Mat;
import org.bytedeco.opencv.opencv_core.Point2f;
import org.bytedeco.opencv.opencv_core.Rect;
import org.bytedeco.opencv.opencv_core.Scalar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BackgroundRollTest {
  /** A tenth of the tightest band a coach sets (10°), and half of it for the drawing's rounding. */
  private static final double ROLL_TOLERANCE_DEG = 0.5;

  private final BackgroundRoll roll = new BackgroundRoll();

  private static List<RoomFrame> frames(IntFunction<DrawnRoom> room) {
    List<RoomFrame> frames = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      frames.add(new RoomFrame(room.apply(i).picture(), Optional.empty()));
    }
    return frames;
  }

  private static UprightEstimate.Found found(UprightEstimate estimate) {
    assertThat(estimate).isInstanceOf(UprightEstimate.Found.class);
    return (UprightEstimate.Found) estimate;
  }

  @ParameterizedTest(name = "roll {0}, pitch {1}, yaw {2}")
  @CsvSource({
    "0, 0, 0",
    "3, 0, 0",
    "-3, 6, 0",
    "7.5, -6, 0",
    "-8, 4, 10",
    "2, -8, -12",
    "5, 8, 12"
  })
  void readsAKnownRollWhateverThePitchAndYaw(double rollDeg, double pitchDeg, double yawDeg) {
    UprightEstimate.Found found =
        found(
            roll.estimate(
                frames(
                    i ->
                        new DrawnRoom(rollDeg, pitchDeg, yawDeg)
                            .post(-1.6, 1)
                            .post(-0.8, 1)
                            .post(1.3, 0.5)
                            .rail(-0.9, 1.2)
                            .rail(0.3, 1.2)
                            .slanted(0.4, 0.3)
                            .limbs(i)
                            .noise(6, i))));

    assertThat(found.rollDeg()).isCloseTo(rollDeg, within(ROLL_TOLERANCE_DEG));
    assertThat(Math.abs(found.rollDeg() - rollDeg)).isLessThanOrEqualTo(found.plusMinusDeg());
  }

  /** Half a degree of pitch or yaw at a focal length of 0.89 longer sides. */
  private static final double CONVERGENCE_TOLERANCE = 0.012;

  /** The drawn room's pitch is up, and its yaw turns the camera to the right. */
  @ParameterizedTest(name = "roll {0}, looking up {1}, turned {2}")
  @CsvSource({
    "0, 0, 0",
    "0, -14, 0",
    "3, -9, 0",
    "-3, 6, 0",
    "0, 0, 11",
    "2, -12, -8",
    "-2, 5, 15",
    "0, -15, 16"
  })
  void tellsHowUprightsAndLevelLinesConverge(double rollDeg, double upDeg, double turnedDeg) {
    UprightEstimate.Found found =
        found(
            roll.estimate(
                frames(
                    i ->
                        new DrawnRoom(rollDeg, upDeg, turnedDeg)
                            .post(-1.6, 1)
                            .post(-0.8, 1)
                            .post(1.3, 0.5)
                            .rail(-2.2, 1.2)
                            .rail(-1.4, 1.2)
                            .rail(-0.9, 1.2)
                            .rail(-0.3, 1.2)
                            .rail(0.4, 1.2)
                            .limbs(i)
                            .noise(6, i))));

    double focal = DrawnRoom.FOCAL_PX / DrawnRoom.WIDTH;
    double down = Math.tan(Math.toRadians(-upDeg)) / focal;
    assertThat(found.uprights().orElseThrow().perLongSide())
        .isCloseTo(down, within(CONVERGENCE_TOLERANCE));
    // The drawn camera turns so that the wall's right end is the farther one.
    double away = Math.tan(Math.toRadians(turnedDeg)) / focal * Math.cos(Math.toRadians(upDeg));
    UprightEstimate.Convergence levels = found.levels().orElseThrow();
    assertThat(levels.perLongSide()).isCloseTo(away, within(levels.plusMinus()));
    assertThat(levels.plusMinus()).isLessThan(10 * CONVERGENCE_TOLERANCE);
    assertThat(Math.abs(found.uprights().orElseThrow().perLongSide() - down))
        .isLessThanOrEqualTo(found.uprights().orElseThrow().plusMinus());
  }

  @Test
  void postsSideBySideDoNotTellThePitch() {
    UprightEstimate estimate =
        roll.estimate(
            frames(
                i ->
                    new DrawnRoom(0, 0, 0)
                        .post(0.5, 1)
                        .post(0.7, 1)
                        .post(0.8, 1)
                        .rail(-0.9, 1.2)
                        .rail(0.3, 1.2)));

    assertThat(found(estimate).uprights()).isEmpty();
  }

  @Test
  void aPostThatLeansRightAtItsTopIsAPositiveRoll() {
    UprightEstimate.Found found =
        found(roll.estimate(frames(i -> new DrawnRoom(4, 0, 0).post(-1, 1).post(0, 1).post(1, 1))));

    assertThat(found.rollDeg()).isPositive();
  }

  @Test
  void oneSidedPostsUnderPitchDoNotPassForRoll() {
    UprightEstimate estimate =
        roll.estimate(frames(i -> new DrawnRoom(0, 9, 0).post(0.8, 1).post(1.6, 1).limbs(i)));

    assertThat(
            estimate.<Boolean>fold(
                found -> Math.abs(found.rollDeg()) <= found.plusMinusDeg(), unsure -> true))
        .isTrue();
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6})
  void noiseAndMovingLimbsAreNoEvidence(int seed) {
    assertThat(
            roll.estimate(frames(i -> new DrawnRoom(0, 0, 0).limbs(10L * seed + i).noise(25, i))))
        .isInstanceOf(UprightEstimate.Unsure.class);
  }

  @Test
  void barsThatLeanEveryWayAreNoEvidence() {
    UprightEstimate estimate =
        roll.estimate(
            frames(
                i ->
                    new DrawnRoom(0, 0, 0)
                        .slanted(-1.5, 0.16)
                        .slanted(-0.6, -0.12)
                        .slanted(0.3, 0.2)
                        .slanted(1.2, -0.18)));

    assertThat(estimate).isInstanceOf(UprightEstimate.Unsure.class);
  }

  @Test
  void anEmptyRoomHasTooFewLines() {
    UprightEstimate estimate = roll.estimate(frames(i -> new DrawnRoom(0, 0, 0)));

    assertThat(estimate).isEqualTo(new UprightEstimate.Unsure(UprightEstimate.Doubt.FEW_LINES));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-6, -2.5, 0, 4, 7})
  void readsAFilmedRoomTurnedByAKnownAngle(double turnDeg) throws IOException {
    List<RoomFrame> frames = new ArrayList<>();
    for (String name : List.of("room-a.jpg", "room-b.jpg", "room-c.jpg")) {
      frames.add(new RoomFrame(turned(read(name), turnDeg), Optional.empty()));
    }

    UprightEstimate.Found found = found(roll.estimate(frames));

    assertThat(found.rollDeg()).isCloseTo(turnDeg, within(ROLL_TOLERANCE_DEG));
  }

  @Test
  void ofAHandHeldCameraItTellsTheCommonViewsRoll() {
    double commonDeg = 1;
    double[] handDeg = {0, 2.5, -2, 1.5, -1};
    List<RoomFrame> frames = new ArrayList<>();
    for (int i = 0; i < handDeg.length; i++) {
      Mat picture =
          new DrawnRoom(commonDeg + handDeg[i], 0, 0)
              .post(-1.6, 1)
              .post(-0.8, 1)
              .post(1.3, 0.5)
              .rail(-0.9, 1.2)
              .noise(6, i)
              .picture();
      // A picture rolled clockwise comes to the common view by a turn counter-clockwise.
      double back = Math.toRadians(-handDeg[i]);
      double cx = (picture.cols() - 1) / 2.0;
      double cy = (picture.rows() - 1) / 2.0;
      double a = Math.cos(back);
      double b = Math.sin(back);
      Similarity move = new Similarity(a, b, cx - a * cx + b * cy, cy - b * cx - a * cy);
      frames.add(new RoomFrame(picture, Optional.empty(), move));
    }

    assertThat(found(roll.estimate(frames)).rollDeg())
        .isCloseTo(commonDeg, within(ROLL_TOLERANCE_DEG));
    // Taken as they are, no line stays where it was.
    List<RoomFrame> asTheyAre =
        frames.stream()
            .map(f -> new RoomFrame(f.segments(), Optional.empty(), Similarity.IDENTITY))
            .toList();
    assertThat(roll.estimate(asTheyAre)).isInstanceOf(UprightEstimate.Unsure.class);
  }

  @Test
  void wantsFramesOfOneSize() {
    assertThatThrownBy(() -> roll.estimate(List.of())).isInstanceOf(IllegalArgumentException.class);
    RoomFrame a = new RoomFrame(new Mat(100, 200, opencv_core.CV_8UC3), Optional.empty());
    RoomFrame b = new RoomFrame(new Mat(200, 100, opencv_core.CV_8UC3), Optional.empty());
    assertThatThrownBy(() -> roll.estimate(List.of(a, b)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  private static Mat read(String name) throws IOException {
    try (InputStream in = BackgroundRollTest.class.getResourceAsStream(name)) {
      byte[] bytes = in.readAllBytes();
      try (Mat raw = new Mat(1, bytes.length, opencv_core.CV_8UC1, new BytePointer(bytes))) {
        return opencv_imgcodecs.imdecode(raw, opencv_imgcodecs.IMREAD_COLOR);
      }
    }
  }

  /** Turns clockwise about the centre and cuts out what stays covered. */
  private static Mat turned(Mat picture, double angleDeg) {
    int cols = picture.cols();
    int rows = picture.rows();
    Mat turned = new Mat();
    Mat matrix =
        opencv_imgproc.getRotationMatrix2D(new Point2f(cols / 2f, rows / 2f), -angleDeg, 1);
    opencv_imgproc.warpAffine(
        picture,
        turned,
        matrix,
        picture.size(),
        opencv_imgproc.INTER_CUBIC,
        opencv_core.BORDER_REPLICATE,
        new Scalar(0));
    double t = Math.toRadians(Math.abs(angleDeg));
    double share = 0.99 * rows / (rows * Math.cos(t) + cols * Math.sin(t));
    int w = (int) (cols * share);
    int h = (int) (rows * share);
    return new Mat(turned, new Rect((cols - w) / 2, (rows - h) / 2, w, h)).clone();
  }
}
