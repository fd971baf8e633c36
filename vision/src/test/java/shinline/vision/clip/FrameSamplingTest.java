package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

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

  /**
   * Sampled 15 times a second.
   *
   * @param unreferenced places of pictures that no other is decoded from
   */
  private static List<Integer> sampled(double fps, int frames, IntPredicate unreferenced) {
    return sampled(fps, frames, unreferenced, ClipPart.WHOLE);
  }

  private static List<Integer> sampled(
      double fps, int frames, IntPredicate unreferenced, ClipPart part) {
    FrameSampling sampling = new FrameSampling(15, part);
    return IntStream.range(0, frames)
        .filter(
            n -> {
              boolean better = n + 1 < frames && unreferenced.test(n) && !unreferenced.test(n + 1);
              return sampling.wants(
                  new FrameStamp(n, n / fps),
                  better ? OptionalDouble.of((n + 1) / fps) : OptionalDouble.empty());
            })
        .boxed()
        .toList();
  }

  private static List<Integer> places(int from, int below, int step) {
    return IntStream.iterate(from, n -> n < below, n -> n + step).boxed().toList();
  }

  /** A run of so many pictures that each refer to the one before, and b-pictures from there. */
  private static IntPredicate everySecondAfter(int run) {
    return n -> n >= run && (n - run) % 2 == 1;
  }

  @Test
  void stepsOverOnceToPicturesThatOthersNeed() {
    // In step from the first picture on.
    assertThat(sampled(30, 200, everySecondAfter(0))).isEqualTo(places(0, 200, 2));
    List<Integer> odd = sampled(30, 200, everySecondAfter(41));
    assertThat(odd.subList(0, 21)).isEqualTo(places(0, 42, 2));
    assertThat(odd.subList(21, odd.size())).isEqualTo(places(43, 200, 2));
  }

  @Test
  void stepsOverToTheNextPictureOnly() {
    // Every fourth of 60 a second.
    assertThat(sampled(60, 400, everySecondAfter(0))).isEqualTo(places(0, 400, 4));
    List<Integer> odd = sampled(60, 400, everySecondAfter(81));
    assertThat(odd.subList(0, 21)).isEqualTo(places(0, 82, 4));
    assertThat(odd.subList(21, odd.size())).isEqualTo(places(85, 400, 4));
  }

  @ParameterizedTest
  @ValueSource(doubles = {24, 25})
  void waitsForNoPictureThatComesLate(double fps) {
    assertThat(sampled(fps, 300, everySecondAfter(31))).isEqualTo(sampled(fps, 300, n -> false));
  }

  /** Times as phones write them meet no schedule for long: steps of one picture each way. */
  @Test
  void returnsToPicturesThatOthersNeedWhenTimesDriftAway() {
    List<Integer> sampled = sampled(30 / 1.001, 5000, everySecondAfter(0));
    assertThat(sampled(30 / 1.001, 5000, n -> false)).anyMatch(n -> n % 2 == 1);
    assertThat(sampled).isEqualTo(places(0, 5000, 2));
  }

  @ParameterizedTest
  @CsvSource({"30, 1", "30, 2", "30, 3", "50, 1", "60, 1", "60, 2", "30, 7"})
  void hardlyLooksLessWhateverOthersNeed(double fps, int group) {
    int frames = (int) (60 * fps);
    IntPredicate groups = n -> n / group % 2 == 1;
    IntPredicate turning = n -> (n + n / 37) % 2 == 1;
    for (IntPredicate unreferenced : List.of(groups, turning)) {
      List<Integer> sampled = sampled(fps, frames, unreferenced);
      assertThat(sampled.size() / 60.0).isBetween(14.4, 15.1);
      int most = (int) Math.ceil(fps * 1.6 / 15);
      for (int i = 1; i < sampled.size(); i++) {
        assertThat(sampled.get(i) - sampled.get(i - 1)).isBetween((int) (fps / 15), most);
      }
    }
  }

  @Test
  void theFirstAndTheLastPictureArePutOffForNothing() {
    assertThat(sampled(30, 60, everySecondAfter(-1)).subList(0, 2)).containsExactly(0, 3);
    ClipPart part = new ClipPart(0, 2);
    assertThat(sampled(30, 90, n -> n == 60, part)).endsWith(58, 60);
  }
}
