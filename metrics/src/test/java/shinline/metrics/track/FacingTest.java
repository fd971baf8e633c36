package shinline.metrics.track;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FacingTest {
  private static final int WIDTH_PX = 600;

  /** A bottom with the rear instep on a bench: its toes point backward. Faces right. */
  private static Map<RawPoint, RawSighting> bottom() {
    Map<RawPoint, RawSighting> points = new EnumMap<>(RawPoint.class);
    put(points, RawPoint.LEFT_HIP, 300, 200);
    put(points, RawPoint.LEFT_KNEE, 390, 190);
    put(points, RawPoint.LEFT_ANKLE, 370, 90);
    put(points, RawPoint.LEFT_HEEL, 355, 75);
    put(points, RawPoint.LEFT_TOE, 415, 72);
    put(points, RawPoint.RIGHT_HIP, 300, 200);
    put(points, RawPoint.RIGHT_KNEE, 280, 110);
    put(points, RawPoint.RIGHT_ANKLE, 185, 150);
    put(points, RawPoint.RIGHT_HEEL, 180, 165);
    put(points, RawPoint.RIGHT_TOE, 130, 140);
    return points;
  }

  private static void put(Map<RawPoint, RawSighting> points, RawPoint point, double x, double y) {
    points.put(point, new RawSighting(x, y, 0.9));
  }

  private static Facing of(Map<RawPoint, RawSighting> points) {
    return Facing.of(new RawTrack(WIDTH_PX, 400, List.of(new RawPose(0, 0, points))));
  }

  private static Map<RawPoint, RawSighting> mirrored(Map<RawPoint, RawSighting> points) {
    Map<RawPoint, RawSighting> mirrored = new EnumMap<>(RawPoint.class);
    points.forEach(
        (point, s) ->
            mirrored.put(point, new RawSighting(WIDTH_PX - s.x(), s.y(), s.confidence())));
    return mirrored;
  }

  @ParameterizedTest
  @EnumSource(Side.class)
  void kneesOutvoteAFootThatLiesBackwardOnItsBench(Side side) {
    Map<RawPoint, RawSighting> points = bottom();
    // The head looks down: nose and ears say nothing.
    put(points, RawPoint.NOSE, 330, 330);
    put(points, RawPoint.LEFT_EAR, 330, 340);
    put(points, RawPoint.RIGHT_EAR, 330, 340);
    Facing facing = of(side == Side.RIGHT ? points : mirrored(points));
    assertThat(facing.side()).isEqualTo(side);
    assertThat(facing.agreement()).isGreaterThan(0.7);
  }

  @Test
  void bothKneesOfASplitSquatBendForward() {
    Map<RawPoint, RawSighting> points = bottom();
    points.keySet().removeIf(p -> p.name().endsWith("_HEEL") || p.name().endsWith("_TOE"));
    assertThat(of(points)).isEqualTo(new Facing(Side.RIGHT, 1));
  }

  @Test
  void aStraightLegSaysNothing() {
    Map<RawPoint, RawSighting> points = new EnumMap<>(RawPoint.class);
    put(points, RawPoint.LEFT_HIP, 300, 200);
    put(points, RawPoint.LEFT_KNEE, 310, 145);
    put(points, RawPoint.LEFT_ANKLE, 320, 90);
    assertThat(of(points).agreement()).isEqualTo(0.5);
  }

  @Test
  void pointsTheModelDoubtsCountLess() {
    Map<RawPoint, RawSighting> points = new EnumMap<>(RawPoint.class);
    points.put(RawPoint.LEFT_HEEL, new RawSighting(300, 80, 0.9));
    points.put(RawPoint.LEFT_TOE, new RawSighting(330, 80, 0.9));
    points.put(RawPoint.RIGHT_HEEL, new RawSighting(200, 80, 0.3));
    points.put(RawPoint.RIGHT_TOE, new RawSighting(150, 80, 0.3));
    Facing facing = of(points);
    assertThat(facing.side()).isEqualTo(Side.RIGHT);
    assertThat(facing.agreement()).isBetween(0.6, 0.7);
  }
}
