package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

class FrameTimesTest {
  /** Sums of doubles. */
  private static final Offset<Double> ROUNDING = Offset.offset(1e-9);

  private static FrameTimes every(double... intervals) {
    FrameTimes times = new FrameTimes();
    double at = 0;
    times.add(at);
    for (int i = 0; i < 2000; i++) {
      at += intervals[i % intervals.length];
      times.add(at);
    }
    return times;
  }

  @Test
  void aSteadyClip() {
    FrameTimes times = every(0.04);
    assertThat(times.count()).isEqualTo(2001);
    assertThat(times.medianFps()).isCloseTo(25, ROUNDING);
    assertThat(times.durationS()).isCloseTo(2001 * 0.04, ROUNDING);
    assertThat(times.variable()).isFalse();
  }

  @Test
  void millisecondRoundingIsNoVariableRate() {
    assertThat(every(0.033, 0.033, 0.034).variable()).isFalse();
  }

  @Test
  void unevenIntervalsAre() {
    assertThat(every(0.033, 0.033, 0.043).variable()).isTrue();
  }

  @Test
  void oneFrameHasNoRate() {
    FrameTimes times = new FrameTimes();
    times.add(0);
    assertThat(times.medianFps()).isZero();
    assertThat(times.durationS()).isZero();
    assertThat(times.variable()).isFalse();
  }
}
