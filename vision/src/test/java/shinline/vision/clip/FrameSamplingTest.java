package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

final class FrameSamplingTest {
  private static FrameStamp stamp(int index) {
    return new FrameStamp(index, index / 29.0);
  }

  @Test
  void looksAboutAsOftenAsAskedFor() {
    FrameSampling sampling = new FrameSampling(10, ClipPart.WHOLE);
    assertThat(IntStream.range(0, 290).filter(n -> sampling.wants(stamp(n))).count())
        .isBetween(95L, 101L);
  }

  @Test
  void aCopyGoesOnAsTheOriginalWould() {
    FrameSampling sampling = new FrameSampling(10, new ClipPart(1, 7));
    IntStream.range(0, 101).forEach(n -> sampling.wants(stamp(n)));
    FrameChoice copy = sampling.copy().orElseThrow();
    int[] ahead = IntStream.range(101, 290).filter(n -> copy.wants(stamp(n))).toArray();
    int[] then = IntStream.range(101, 290).filter(n -> sampling.wants(stamp(n))).toArray();
    assertThat(ahead).isEqualTo(then).hasSizeBetween(30, 40);
  }
}
