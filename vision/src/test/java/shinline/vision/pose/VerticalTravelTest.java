package shinline.vision.pose;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

final class VerticalTravelTest {

  private static VerticalTravel of(double depth, double periodS, double forS) {
    VerticalTravel travel = new VerticalTravel();
    for (double t = 0; t <= forS; t += 1 / 15.0) {
      travel.add(t, -depth / 2 * (1 - Math.cos(2 * Math.PI * t / periodS)));
    }
    return travel;
  }

  @Test
  void countsEachWayDownAndUp() {
    VerticalTravel squats = of(0.25, 3, 12.1);
    assertThat(squats.times()).isEqualTo(4);
    // Half a period after the last low the hips are up again by the whole depth.
    assertThat(squats.range()).isCloseTo(0.25, within(0.01));
  }

  @Test
  void theBobOfAWalkerIsNone() {
    VerticalTravel walk = of(0.03, 0.5, 12);
    assertThat(walk.times()).isZero();
    assertThat(walk.travelled()).isZero();
  }

  @Test
  void theRangeForgets() {
    VerticalTravel travel = of(0.25, 3, 3);
    for (double t = 3.1; t < 8; t += 0.1) {
      travel.add(t, 0);
    }
    assertThat(travel.range()).isCloseTo(0, within(1e-9));
    assertThat(travel.times()).isEqualTo(1);
  }
}
