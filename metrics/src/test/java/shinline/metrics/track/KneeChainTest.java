package shinline.metrics.track;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import shinline.metrics.geometry.Point;
import shinline.metrics.synthetic.ShippedCalibration;

class KneeChainTest {
  private static final int FRAMES = 120;
  private static final double BODY = 800;
  private static final double SHANK = 197;
  private static final double[] TIMES = Paths.times(FRAMES, 30);
  private static final Point FRONT_FOOT = new Point(500, 60);
  private static final Point REAR_FOOT = new Point(180, 110);

  /** The front shin tips forward by 30° and comes back; the rear shank tips from 60° to 10°. */
  private static Point front(int i) {
    return on(FRONT_FOOT, 60 - 30 * Math.cos(2 * Math.PI * i / FRAMES));
  }

  private static Point rear(int i) {
    return on(REAR_FOOT, 35 + 25 * Math.cos(2 * Math.PI * i / FRAMES));
  }

  private static Point on(Point foot, double slopeDeg) {
    double a = Math.toRadians(slopeDeg);
    return foot.plus(SHANK * Math.cos(a), SHANK * Math.sin(a));
  }

  private final LegVotes votes =
      new LegVotes(FRAMES, Side.RIGHT, Optional.empty(), ShippedCalibration.HEAVY);

  private KneeChain solve(PointPath left, PointPath right) {
    FootPlants plants = new FootPlants(FRONT_FOOT, REAR_FOOT, 1);
    return KneeChain.solve(
        left,
        right,
        plants,
        Paths.of(FRAMES, i -> FRONT_FOOT),
        Paths.of(FRAMES, i -> REAR_FOOT),
        TIMES,
        BODY,
        LegIdentityParameters.of(ShippedCalibration.HEAVY),
        votes);
  }

  private KneeChain exchanged(IntPredicate when) {
    return solve(
        Paths.of(FRAMES, i -> when.test(i) ? rear(i) : front(i)),
        Paths.of(FRAMES, i -> when.test(i) ? front(i) : rear(i)));
  }

  private static void assertTrueKnees(KneeChain knees) {
    for (int i = 0; i < FRAMES; i++) {
      assertThat(knees.front().at(i)).as("front %d", i).isEqualTo(front(i));
      assertThat(knees.rear().at(i)).as("rear %d", i).isEqualTo(rear(i));
    }
  }

  @Test
  void rightLabelsStay() {
    assertTrueKnees(exchanged(i -> false));
    assertThat(votes.frontLeg()).isEqualTo(Side.LEFT);
    assertThat(votes.agreement()).isEqualTo(1);
    assertThat(votes.swappedShare()).isZero();
  }

  @Test
  void aWholeExchangedPhaseIsPutRight() {
    assertTrueKnees(exchanged(i -> i >= 40 && i < 80));
    assertThat(votes.frontLeg()).isEqualTo(Side.LEFT);
    assertThat(votes.swappedShare()).isEqualTo(40.0 / FRAMES);
    assertThat(votes.swapped()[60]).isTrue();
  }

  @Test
  void labelsThatAlwaysLieNameTheOtherLeg() {
    assertTrueKnees(exchanged(i -> true));
    assertThat(votes.frontLeg()).isEqualTo(Side.RIGHT);
    assertThat(votes.swappedShare()).isZero();
  }

  @Test
  void twoSightingsOfOneKneeLeaveTheOtherUnseen() {
    IntPredicate both = i -> i >= 50 && i < 60;
    KneeChain knees =
        solve(
            Paths.of(FRAMES, KneeChainTest::front),
            Paths.of(FRAMES, i -> both.test(i) ? front(i).plus(-4, 3) : rear(i)));
    for (int i = 0; i < FRAMES; i++) {
      assertThat(knees.front().at(i).distanceTo(front(i))).isLessThan(6);
      assertThat(knees.rear().seen(i)).as("rear %d", i).isEqualTo(!both.test(i));
    }
  }

  @Test
  void aKneeThatMakesTheShankTooLongIsDropped() {
    KneeChain knees =
        solve(
            Paths.of(FRAMES, i -> i == 30 ? front(i).plus(60, 60) : front(i)),
            Paths.of(FRAMES, KneeChainTest::rear));
    assertThat(knees.front().seen(30)).isFalse();
    assertThat(knees.front().seen(29)).isTrue();
  }
}
