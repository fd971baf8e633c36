package shinline.metrics.track;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import shinline.metrics.geometry.Point;

class FootPlantsTest {
  private static final int FRAMES = 100;
  private static final Point FRONT = new Point(500, 60);
  private static final Point REAR = new Point(160, 110);

  /** Left is the front foot, but for every third frame. */
  private static PointPath label(boolean left) {
    return Paths.of(FRAMES, i -> left == (i % 3 != 0) ? FRONT : REAR);
  }

  @Test
  void plantsDoNotDependOnWhatTheFeetAreCalled() {
    FootPlants plants = FootPlants.of(label(true), label(false), 100).orElseThrow();
    assertThat(plants.front()).isEqualTo(FRONT);
    assertThat(plants.rear()).isEqualTo(REAR);
    assertThat(plants.splitShare()).isEqualTo(1);
  }

  @Test
  void eachSightingBelongsToThePlantItIsNearerTo() {
    PointPath left = label(true);
    FootPlants plants = FootPlants.of(left, label(false), 100).orElseThrow();
    assertThat(plants.onFront(left, 1)).isTrue();
    assertThat(plants.onFront(left, 3)).isFalse();
    PointPath off = Paths.of(1, i -> new Point(503, 64));
    assertThat(plants.onFront(off, 0)).isTrue();
    assertThat(plants.away(off, 0)).isCloseTo(5, within(1e-9));
  }

  /** The steps of a walk are spread out; where a foot stays is where the sightings lie densest. */
  @Test
  void walkingInDoesNotMoveThePlants() {
    PointPath walkThenStay = Paths.of(FRAMES, i -> i < 40 ? new Point(12 * i, 60) : FRONT);
    PointPath other = Paths.of(FRAMES, i -> i < 40 ? new Point(12 * i - 150, 60) : REAR);
    FootPlants plants = FootPlants.of(walkThenStay, other, 100).orElseThrow();
    assertThat(plants.front().distanceTo(FRONT)).isLessThan(1);
    assertThat(plants.rear().distanceTo(REAR)).isLessThan(1);
  }

  @Test
  void feetSideBySideHaveNoPlants() {
    PointPath a = Paths.of(FRAMES, i -> new Point(300, 60));
    PointPath b = Paths.of(FRAMES, i -> new Point(330, 60));
    assertThat(FootPlants.of(a, b, 100)).isEmpty();
  }
}
