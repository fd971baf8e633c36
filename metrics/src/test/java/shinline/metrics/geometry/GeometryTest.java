package shinline.metrics.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class GeometryTest {

  /** Two decimals are given, each difference of two of them rounded by itself. */
  private static final double TWO_DECIMALS = 0.011;

  /** Winter 2009, Table A.1, frames 1, 28, 50, 60 (coordinates in cm); angles by definition. */
  @ParameterizedTest
  @CsvSource({
    "44.94, 78.58, 41.00, 47.40, 9.31, 21.44, 39.32, 82.80, 43.47, 50.68",
    "101.53, 79.34, 112.34, 50.46, 124.94, 10.63, 107.55, 110.52, 2.97, -17.55",
    "142.02, 82.65, 140.11, 51.09, 130.56, 9.99, 76.92, 86.54, 9.62, 13.08",
    "159.88, 80.23, 151.22, 50.33, 132.26, 12.66, 63.28, 73.85, 10.56, 26.72"
  })
  void wintersGaitFrames(
      double hx,
      double hy,
      double kx,
      double ky,
      double ax,
      double ay,
      double leg,
      double thigh,
      double knee,
      double shin) {
    Point hip = new Point(hx, hy);
    Point kneeAt = new Point(kx, ky);
    Point ankle = new Point(ax, ay);
    close(SegmentAngles.segment(ankle, kneeAt), leg);
    close(SegmentAngles.segment(kneeAt, hip), thigh);
    close(SegmentAngles.kneeFlexion(hip, kneeAt, ankle), knee);
    close(SegmentAngles.shinForward(ankle, kneeAt), shin);
    close(SegmentAngles.thighFromHorizontal(kneeAt, hip), 180 - thigh);
  }

  private static void close(Angle angle, double degrees) {
    assertThat(angle.degrees()).isCloseTo(degrees, within(TWO_DECIMALS));
  }

  /** Winter 2009, Table A.1, hip and rib cage, frames 50 and 60; lean by definition. */
  @Test
  void wintersTrunk() {
    close(SegmentAngles.trunkLean(new Point(142.02, 82.65), new Point(144.05, 107.46)), 4.68);
    close(SegmentAngles.trunkLean(new Point(159.88, 80.23), new Point(164.58, 104.03)), 11.17);
  }

  /** Signs of the definitions, on a figure drawn by hand, facing +x. */
  @Test
  void signs() {
    Point ankle = new Point(0, 0);
    Point knee = new Point(10, 40);
    Point hip = new Point(-30, 40);
    close(SegmentAngles.thighFromHorizontal(knee, hip), 0);
    assertThat(SegmentAngles.thighFromHorizontal(knee, hip.plus(0, 5)).degrees()).isPositive();
    close(SegmentAngles.thighFromHorizontal(new Point(0, 0), new Point(0, 40)), 90);
    close(SegmentAngles.hipFlexion(hip.plus(0, 50), hip, knee), 90);
    close(SegmentAngles.hipFlexion(hip.plus(50, 50), hip, knee), 135);
    close(SegmentAngles.hipFlexion(new Point(0, 90), new Point(0, 40), new Point(0, 0)), 0);
    close(SegmentAngles.kneeFlexion(hip, knee, ankle), 90 + 14.04);
    assertThat(SegmentAngles.kneePastToe(knee, new Point(16, 0))).isEqualTo(-6);
    assertThatThrownBy(() -> SegmentAngles.segment(hip, hip))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Plain trigonometry: shank 43.05 cm, ankle above a toe tip at the origin. */
  @ParameterizedTest
  @CsvSource({"20, 14.72", "30, 21.53", "40, 27.67"})
  void kneePastToeFromShin(double degrees, double cm) {
    double shin = Math.toRadians(degrees);
    Point knee = new Point(43.05 * Math.sin(shin), 43.05 * Math.cos(shin));
    // 21.525 is printed as 21.53.
    assertThat(SegmentAngles.kneePastToe(knee, new Point(0, 0))).isCloseTo(cm, within(0.0051));
  }

  /** Orthographic projection, plain trigonometry: tan θ' = tan θ cos ψ. Two decimals. */
  @ParameterizedTest
  @CsvSource({"10, 39.57", "15, 39.03", "20, 38.26", "30, 36.01"})
  void yaw(double yaw, double seen) {
    var view = new ViewGeometry(Angle.ofDegrees(yaw), Angle.ZERO, Angle.ZERO);
    assertThat(seenFromVertical(view, 40)).isCloseTo(seen, within(0.0051));
    assertThat(view.seen(new Point(10, 0)).x())
        .isCloseTo(10 * Math.cos(Math.toRadians(yaw)), within(1e-12));
  }

  /** Plain trigonometry: tan θ' = tan θ / cos φ; 40° at a pitch of 10°. */
  @Test
  void pitch() {
    var view = new ViewGeometry(Angle.ZERO, Angle.ofDegrees(10), Angle.ZERO);
    assertThat(seenFromVertical(view, 40)).isCloseTo(40.43, within(0.0051));
  }

  private static double seenFromVertical(ViewGeometry view, double realDeg) {
    double real = Math.toRadians(realDeg);
    Point tip = view.seen(new Point(Math.sin(real), Math.cos(real)));
    return Math.toDegrees(Math.atan2(tip.x(), tip.y()));
  }

  @Test
  void rollAddsOneToOneToShinAndTrunkAndNothingToTheKnee() {
    var view = new ViewGeometry(Angle.ZERO, Angle.ZERO, Angle.ofDegrees(3));
    Point hip = view.seen(new Point(-20, 60));
    Point knee = view.seen(new Point(20, 45));
    Point ankle = view.seen(new Point(0, 5));
    double shin = SegmentAngles.shinForward(new Point(0, 5), new Point(20, 45)).degrees();
    assertThat(SegmentAngles.shinForward(ankle, knee).degrees()).isCloseTo(shin + 3, within(1e-9));
    assertThat(SegmentAngles.kneeFlexion(hip, knee, ankle).degrees())
        .isCloseTo(
            SegmentAngles.kneeFlexion(new Point(-20, 60), new Point(20, 45), new Point(0, 5))
                .degrees(),
            within(1e-9));
  }

  /** σ_θ ≈ √2 σ / L, computed: 3 px on 200 px. */
  @Test
  void keypointNoise() {
    assertThat(SegmentAngles.sigma(3, 200).degrees()).isCloseTo(1.22, within(0.006));
  }

  /**
   * A camera placed in space by its position and where it looks, projecting points of the side
   * plane one by one: what the view takes for real has the true angles and ratios.
   */
  @ParameterizedTest
  @CsvSource({
    // yaw, height of the lens above the point looked at, roll, focal length
    "0, 0, 0, 800",
    "0, 0.8, 0, 800",
    "0, 1.1, 3, 1400",
    "15, 0, 0, 800",
    "-18, 0.7, -4, 700",
    "25, -0.5, 5, 900"
  })
  void throughALens(double yawDeg, double above, double rollDeg, double focal) {
    double yaw = Math.toRadians(yawDeg);
    double roll = Math.toRadians(rollDeg);
    double distance = 3.6;
    double[] eye = {distance * Math.sin(yaw), above, -distance * Math.cos(yaw)};
    double reach = Math.sqrt(eye[0] * eye[0] + eye[1] * eye[1] + eye[2] * eye[2]);
    double[] axis = {-eye[0] / reach, -eye[1] / reach, -eye[2] / reach};
    double level = Math.hypot(axis[0], axis[2]);
    double[] right = {axis[2] / level, 0, -axis[0] / level};
    double[] up = {
      axis[1] * right[2] - axis[2] * right[1],
      axis[2] * right[0] - axis[0] * right[2],
      axis[0] * right[1] - axis[1] * right[0]
    };
    Point centre = new Point(480, 270);
    List<Point> real =
        List.of(new Point(-0.5, 0.4), new Point(0.3, -0.6), new Point(0.4, -0.1), new Point(0, 0));
    ViewGeometry view =
        new ViewGeometry(
            Angle.ofDegrees(yawDeg),
            new Angle(Math.asin(-axis[1])),
            Angle.ofDegrees(rollDeg),
            new Lens(centre, focal));
    List<Point> back = new ArrayList<>();
    for (Point p : real) {
      double[] from = {p.x() - eye[0], p.y() - eye[1], -eye[2]};
      double depth = dot(from, axis);
      double u = focal * dot(from, right) / depth;
      double v = focal * dot(from, up) / depth;
      // Plus makes an upright lean forward.
      Point seen =
          centre.plus(
              u * Math.cos(roll) + v * Math.sin(roll), v * Math.cos(roll) - u * Math.sin(roll));
      back.add(view.real(seen));
      assertThat(view.seen(view.real(seen)).distanceTo(seen)).isLessThan(1e-6);
    }
    // The plane at the centre's distance comes out at focal length over distance, parallel to it.
    double scale = focal / reach;
    for (int i = 0; i < real.size(); i++) {
      assertThat(back.get(i).x() - centre.x()).isCloseTo(scale * real.get(i).x(), within(1e-6));
      assertThat(back.get(i).y() - centre.y()).isCloseTo(scale * real.get(i).y(), within(1e-6));
    }
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  /** From far away a lens makes no difference. */
  @Test
  void aVeryLongLensIsParallelProjection() {
    Angle yaw = Angle.ofDegrees(20);
    Angle pitch = Angle.ofDegrees(12);
    Angle roll = Angle.ofDegrees(-3);
    ViewGeometry far = new ViewGeometry(yaw, pitch, roll);
    ViewGeometry longLens = new ViewGeometry(yaw, pitch, roll, new Lens(new Point(0, 0), 1e9));
    Point real = new Point(80, -55);
    assertThat(longLens.seen(real).distanceTo(far.seen(real))).isLessThan(1e-4);
    assertThat(longLens.real(real).distanceTo(far.real(real))).isLessThan(1e-4);
  }

  /** At the centre a yaw widens by its cosine and a pitch stretches by its own. */
  @Test
  void enlargementAtTheCentre() {
    ViewGeometry view =
        new ViewGeometry(
            Angle.ofDegrees(20),
            Angle.ofDegrees(15),
            Angle.ofDegrees(2),
            new Lens(new Point(480, 270), 800));
    double cosines = Math.cos(Math.toRadians(20)) * Math.cos(Math.toRadians(15));
    assertThat(view.enlargement(new Point(480, 270)))
        .isCloseTo(Math.sqrt(1 / cosines), within(2e-3));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void everyViewCanBeUndone(long seed) {
    Random random = new Random(seed);
    var view =
        new ViewGeometry(
            Angle.ofDegrees(random.nextDouble(-40, 40)),
            Angle.ofDegrees(random.nextDouble(-30, 30)),
            Angle.ofDegrees(random.nextDouble(-20, 20)));
    Point p = new Point(random.nextDouble(-100, 100), random.nextDouble(-100, 100));
    assertThat(view.real(view.seen(p)).distanceTo(p)).isLessThan(1e-9);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void scaleAndPlaceChangeNoAngle(long seed) {
    Random random = new Random(seed);
    Point hip = new Point(random.nextDouble(-50, 0), random.nextDouble(40, 90));
    Point knee = new Point(random.nextDouble(0, 40), random.nextDouble(30, 50));
    Point ankle = new Point(0, 5);
    double factor = random.nextDouble(0.1, 9);
    Point[] moved = new Point[3];
    Point[] real = {hip, knee, ankle};
    for (int i = 0; i < 3; i++) {
      moved[i] = real[i].times(factor).plus(17, -300);
    }
    assertThat(SegmentAngles.kneeFlexion(moved[0], moved[1], moved[2]).degrees())
        .isCloseTo(SegmentAngles.kneeFlexion(hip, knee, ankle).degrees(), within(1e-8));
    // Facing the other way with x turned round is the same athlete: mirrored back, same shin.
    Point mirrored = new Point(-knee.x(), knee.y());
    assertThat(SegmentAngles.shinForward(new Point(0, 5), mirrored).degrees())
        .isCloseTo(-SegmentAngles.shinForward(ankle, knee).degrees(), within(1e-9));
  }

  @Test
  void anglesWrap() {
    assertThat(Angle.ofDegrees(540).wrapped().degrees()).isCloseTo(180, within(1e-9));
    assertThat(Angle.ofDegrees(-190).wrapped().degrees()).isCloseTo(170, within(1e-9));
  }
}
