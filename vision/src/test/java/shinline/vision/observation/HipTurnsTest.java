package shinline.vision.observation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import shinline.vision.observation.HipTurns.Turn;

class HipTurnsTest {
  private static final double REGION_PX = 500;

  /** Heights are told from the bottom of a picture this high, rows from its top. */
  private static final double PICTURE_PX = 540;

  private static List<Turn> turns(double[] heights) {
    HipTurns turns = new HipTurns();
    List<Turn> seen = new ArrayList<>();
    for (double height : heights) {
      turns.add(PICTURE_PX - height, REGION_PX).ifPresent(seen::add);
    }
    return seen;
  }

  /** Three reps of 100 pixels, 60 looks each, from standing. */
  private static double[] set(double jitterPx) {
    Random random = new Random(3);
    double[] heights = new double[200];
    for (int i = 0; i < heights.length; i++) {
      double phase = i < 10 || i >= 190 ? 0 : (i - 10) / 60.0;
      heights[i] =
          300 - 50 * (1 - Math.cos(2 * Math.PI * phase)) + jitterPx * (2 * random.nextDouble() - 1);
    }
    return heights;
  }

  @Test
  void eachTopAndEachBottomOnce() {
    assertThat(turns(set(0)))
        .containsExactly(Turn.TOP, Turn.BOTTOM, Turn.TOP, Turn.BOTTOM, Turn.TOP, Turn.BOTTOM);
  }

  @Test
  void jitterTurnsNothing() {
    assertThat(turns(set(5))).isEqualTo(turns(set(0)));
  }

  @Test
  void aClipMayStartAtTheBottom() {
    assertThat(turns(new double[] {100, 101, 150, 200, 201, 150, 100}))
        .containsExactly(Turn.BOTTOM, Turn.TOP);
  }

  @Test
  void standingStillTurnsNothing() {
    assertThat(turns(new double[] {300, 302, 299, 301, 285, 300})).isEmpty();
  }
}
