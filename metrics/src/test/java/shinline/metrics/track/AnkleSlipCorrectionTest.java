package shinline.metrics.track;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import shinline.metrics.geometry.Point;
import shinline.metrics.synthetic.ShippedCalibration;

/** A shank of 100 px, of an athlete 450 px tall, that leans forward and back over its ankle. */
class AnkleSlipCorrectionTest {
  private static final int FRAMES = 120;
  private static final double BODY_PX = 450;
  private static final Point ANKLE = new Point(500, 40);
  private static final Point HEEL = new Point(480, 20);
  private static final double SHANK_PX = 100;

  private static Point knee(int i) {
    double lean = Math.toRadians(15 + 15 * Math.sin(i / 15.0));
    return ANKLE.plus(SHANK_PX * Math.sin(lean), SHANK_PX * Math.cos(lean));
  }

  private static Point rearKnee(int i) {
    return new Point(350, 60 + 20 * Math.cos(i / 15.0));
  }

  private static boolean late(int i) {
    return i >= 80 && i < 100;
  }

  /** Along the shin from the ankle to the knee, share of the shank. */
  private static Point upTheShin(int i, double share) {
    Point knee = knee(i);
    return new Point(
        ANKLE.x() + share * (knee.x() - ANKLE.x()), ANKLE.y() + share * (knee.y() - ANKLE.y()));
  }

  private static AnkleSlipCorrection mend(IntFunction<Point> ankle, IntFunction<Point> heel) {
    return AnkleSlipCorrection.mend(
        Paths.of(FRAMES, ankle),
        Paths.of(FRAMES, heel),
        ANKLE,
        HEEL,
        Paths.of(FRAMES, AnkleSlipCorrectionTest::rearKnee),
        Paths.of(FRAMES, AnkleSlipCorrectionTest::knee),
        BODY_PX,
        ShippedCalibration.HEAVY);
  }

  @Test
  void anAnkleThatSlidUpTheShinGoesBackToItsPlaceAndIsTrustedLess() {
    AnkleSlipCorrection foot = mend(i -> late(i) ? upTheShin(i, 0.2) : ANKLE, i -> HEEL);
    for (int i = 0; i < FRAMES; i++) {
      assertThat(foot.ankle().at(i).distanceTo(ANKLE)).as("frame %d", i).isLessThan(1e-9);
      assertThat(foot.ankle().confidence(i) < 0.6).as("frame %d", i).isEqualTo(late(i));
    }
  }

  @Test
  void aHeelThatSlidWithItIsNotSeen() {
    AnkleSlipCorrection foot =
        mend(
            i -> late(i) ? upTheShin(i, 0.2) : ANKLE,
            i -> late(i) && i < 90 ? HEEL.plus(4, 18) : HEEL);
    for (int i = 0; i < FRAMES; i++) {
      assertThat(foot.heel().seen(i)).as("frame %d", i).isEqualTo(!(late(i) && i < 90));
    }
  }

  @Test
  void aHeelThatReallyRisesTakesAnkleAndKneeWithIt() {
    // Ankle, heel and knee go up together: the shank keeps its length.
    IntFunction<Point> up = i -> late(i) ? ANKLE.plus(5, 14) : ANKLE;
    AnkleSlipCorrection foot =
        AnkleSlipCorrection.mend(
            Paths.of(FRAMES, up),
            Paths.of(FRAMES, i -> late(i) ? HEEL.plus(4, 22) : HEEL),
            ANKLE,
            HEEL,
            Paths.of(FRAMES, AnkleSlipCorrectionTest::rearKnee),
            Paths.of(FRAMES, i -> late(i) ? knee(i).plus(5, 14) : knee(i)),
            BODY_PX,
            ShippedCalibration.HEAVY);
    for (int i = 0; i < FRAMES; i++) {
      assertThat(foot.ankle().at(i)).as("frame %d", i).isEqualTo(up.apply(i));
      assertThat(foot.heel().seen(i)).isTrue();
    }
  }

  @Test
  void anAnkleNotSeenIsWhereTheFootIsPlantedIfTheKneeSaysSo() {
    PointPath.Builder ankle = PointPath.ofSize(FRAMES);
    for (int i = 0; i < FRAMES; i++) {
      if (!late(i)) {
        ankle.put(i, ANKLE.x(), ANKLE.y(), 1);
      }
    }
    AnkleSlipCorrection foot =
        AnkleSlipCorrection.mend(
            ankle.build(),
            Paths.of(FRAMES, i -> HEEL),
            ANKLE,
            HEEL,
            Paths.of(FRAMES, AnkleSlipCorrectionTest::rearKnee),
            // Half of the unseen time the knee is too high for a foot on the floor.
            Paths.of(FRAMES, i -> late(i) && i >= 90 ? knee(i).plus(0, 12) : knee(i)),
            BODY_PX,
            ShippedCalibration.HEAVY);
    for (int i = 0; i < FRAMES; i++) {
      assertThat(foot.ankle().seen(i)).as("frame %d", i).isEqualTo(!(late(i) && i >= 90));
    }
  }

  @Test
  void withoutAKneeNothingIsChanged() {
    PointPath nothing = PointPath.ofSize(FRAMES).build();
    PointPath slid = Paths.of(FRAMES, i -> late(i) ? upTheShin(i, 0.2) : ANKLE);
    AnkleSlipCorrection foot =
        AnkleSlipCorrection.mend(
            slid,
            Paths.of(FRAMES, i -> HEEL),
            ANKLE,
            HEEL,
            nothing,
            nothing,
            BODY_PX,
            ShippedCalibration.HEAVY);
    assertThat(foot.ankle()).isSameAs(slid);
  }
}
