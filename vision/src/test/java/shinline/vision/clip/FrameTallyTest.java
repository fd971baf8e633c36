package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class FrameTallyTest {
  private static final double TENTH = 0.1;

  private static FrameTally tally(int promised, int... missing) {
    FrameTally tally = new FrameTally(TENTH, ClipLimits.USUAL);
    List<Integer> gone = java.util.Arrays.stream(missing).boxed().toList();
    for (int n = 0; n < promised; n++) {
      tally.promise(n);
      if (!gone.contains(n)) {
        tally.good(n);
      }
    }
    return tally;
  }

  @Test
  void wholeIsComplete() {
    assertThat(tally(20).ending(20, 2)).isEqualTo(new ClipEnding.Complete(20));
  }

  @Test
  void oneUnfinishedPictureAtTheEndIsForgiven() {
    assertThat(tally(19).ending(20, 2)).isEqualTo(new ClipEnding.Complete(19));
  }

  @Test
  void anIndexThatListsMoreIsAnEarlyEnd() {
    ClipEnding ending = tally(12).ending(20, 2);
    assertThat(ending).isEqualTo(new ClipEnding.EndedEarly(12, 20, 11 * TENTH, 2, List.of()));
  }

  @Test
  void missingInsideAreGapsWithTimes() {
    ClipEnding ending = tally(20, 5, 6, 10).ending(20, 2);
    assertThat(ending)
        .isEqualTo(
            new ClipEnding.Damaged(
                17,
                20,
                List.of(
                    new ClipEnding.Gap(4 * TENTH, 7 * TENTH, 2),
                    new ClipEnding.Gap(9 * TENTH, 11 * TENTH, 1))));
  }

  @Test
  void timesThatJumpOrRunBackGoOverTheLimit() {
    ClipLimits limits = new ClipLimits(60, 2, 100);
    long[][] jumping = {{0, 1, 22}, {0, 1, Long.MAX_VALUE}, {5, 6, Long.MIN_VALUE}, {5, 4}};
    for (long[] ticks : jumping) {
      FrameTally tally = new FrameTally(TENTH, limits);
      for (long tick : ticks) {
        assertThat(tally.breach()).isEmpty();
        tally.good(tick);
      }
      assertThat(tally.breach()).contains(ClipEnding.StopCause.GAP);
    }
    FrameTally onAndOn = new FrameTally(TENTH, limits);
    for (int tick = 0; tick <= 600; tick += 20) {
      onAndOn.good(tick);
    }
    assertThat(onAndOn.breach()).isEmpty();
    onAndOn.good(601);
    assertThat(onAndOn.breach()).contains(ClipEnding.StopCause.LENGTH);
  }

  @Test
  void withoutAnIndexTheLengthTells() {
    assertThat(tally(20).ending(0, 9)).isInstanceOf(ClipEnding.EndedEarly.class);
    // Sound that runs on for less than a second.
    assertThat(tally(20).ending(0, 2.8)).isEqualTo(new ClipEnding.Complete(20));
  }

  /** Ten pictures a second, a key every second, every odd one leant on by nobody. */
  private static FrameTally coded(int promised, int... missing) {
    FrameTally tally = tally(promised, missing);
    List<Integer> gone = java.util.Arrays.stream(missing).boxed().toList();
    for (int n = 0; n < promised; n++) {
      if (n % 2 == 1) {
        tally.unreferenced(n);
      } else if (!gone.contains(n)) {
        tally.anchor(n);
        if (n % 10 == 0) {
          tally.key(n);
        }
      }
    }
    return tally;
  }

  @Test
  void whatFollowsAMissingPictureIsDoubtfulToTheNextKey() {
    assertThat(coded(40, 14).doubtful())
        .containsExactly(new DoubtfulPictures(12 * TENTH, 20 * TENTH));
  }

  @Test
  void aPictureThatNobodyLeansOnLeavesNoDoubt() {
    assertThat(coded(40, 13).doubtful()).isEmpty();
    assertThat(coded(40).doubtful()).isEmpty();
  }

  @Test
  void aMissingKeyIsDoubtfulToTheNextOneAndTwoOfOneStretchAreOne() {
    assertThat(coded(40, 20, 24).doubtful())
        .containsExactly(new DoubtfulPictures(18 * TENTH, 30 * TENTH));
  }

  @Test
  void withoutAFurtherKeyTheDoubtGoesOnToTheEnd() {
    assertThat(coded(40, 34).doubtful())
        .containsExactly(new DoubtfulPictures(32 * TENTH, 39 * TENTH));
  }
}
