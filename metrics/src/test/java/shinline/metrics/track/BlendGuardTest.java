package shinline.metrics.track;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import shinline.metrics.geometry.Point;
import shinline.metrics.synthetic.ShippedCalibration;

class BlendGuardTest {
  private static final int FRAMES = 90;
  private static final double[] TIMES = Paths.times(FRAMES, 30);

  private static Point front(int i) {
    return new Point(400 + 40 * Math.sin(i / 20.0), 250);
  }

  private static Point rear(int i) {
    return new Point(200, 200 - 60 * Math.sin(i / 20.0));
  }

  @Test
  void aMixtureIsDroppedAndNothingElse() {
    PointPath front =
        Paths.of(FRAMES, i -> i % 10 == 4 ? front(i).times(0.7).plus(60, 57) : front(i));
    PointPath rear =
        Paths.of(FRAMES, i -> i % 10 == 4 ? rear(i).times(0.7).plus(120, 75) : rear(i));
    LegIdentity.Pair clean =
        BlendGuard.of(ShippedCalibration.HEAVY).clean(new LegIdentity.Pair(front, rear), TIMES);
    for (int i = 0; i < FRAMES; i++) {
      assertThat(clean.front().seen(i)).as("frame %d", i).isEqualTo(i % 10 != 4);
      assertThat(clean.rear().seen(i)).as("frame %d", i).isEqualTo(i % 10 != 4);
    }
  }

  @Test
  void kneesThatComeNearerSlowlyAreKept() {
    // From 300 to 150 px apart in 3 s, as in a deep rep: 17 % of the way within the window.
    PointPath front = Paths.of(FRAMES, i -> new Point(500 - 150.0 * i / FRAMES, 250));
    PointPath rear = Paths.of(FRAMES, i -> new Point(200, 250));
    LegIdentity.Pair clean =
        BlendGuard.of(ShippedCalibration.HEAVY).clean(new LegIdentity.Pair(front, rear), TIMES);
    for (int i = 0; i < FRAMES; i++) {
      assertThat(clean.front().seen(i)).as("frame %d", i).isTrue();
    }
  }

  @Test
  void kneesThatComeNearerInAQuickDriveAreKept() {
    // From 260 to 140 px apart in 0.6 s, as a leg straightens after a rep on the bench.
    PointPath front =
        Paths.of(
            FRAMES, i -> new Point(460 - 120 * Math.min(1, Math.max(0, (i - 40) / 18.0)), 250));
    PointPath rear = Paths.of(FRAMES, i -> new Point(200, 250));
    LegIdentity.Pair clean =
        BlendGuard.of(ShippedCalibration.HEAVY).clean(new LegIdentity.Pair(front, rear), TIMES);
    for (int i = 0; i < FRAMES; i++) {
      assertThat(clean.front().seen(i)).as("frame %d", i).isTrue();
    }
  }

  @Test
  void aKneeSeenAloneIsKept() {
    PointPath front = Paths.of(FRAMES, BlendGuardTest::front);
    PointPath nothing = PointPath.ofSize(FRAMES).build();
    LegIdentity.Pair clean =
        BlendGuard.of(ShippedCalibration.HEAVY).clean(new LegIdentity.Pair(front, nothing), TIMES);
    assertThat(clean.front().at(7)).isEqualTo(front.at(7));
    assertThat(clean.rear().seen(7)).isFalse();
  }
}
