package shinline.vision.clip;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Ten ticks a second; pictures one tick apart; the film's first has tick 100. */
final class ForesightTest {
  private static final double TENTH = 0.1;
  private static final long FIRST = 100;

  private final List<FrameStamp> asked = new ArrayList<>();
  private final Foresight foresight = new Foresight(this::even, TENTH);

  private boolean even(FrameStamp stamp) {
    asked.add(stamp);
    return stamp.index() % 2 == 0;
  }

  private static FrameStamp stamp(int index) {
    return new FrameStamp(index, index * TENTH);
  }

  private static List<FrameStamp> stamps(int count) {
    return IntStream.range(0, count).mapToObj(ForesightTest::stamp).toList();
  }

  /**
   * Reads so many pictures, one more than a multiple of four, in the order of decoding: each fourth
   * before the three that are shown before it.
   */
  private void read(int count) {
    foresight.read(FIRST, false);
    for (int n = 1; n < count; n += 4) {
      foresight.read(FIRST + n + 3, false);
      foresight.read(FIRST + n, true);
      foresight.read(FIRST + n + 1, false);
      foresight.read(FIRST + n + 2, true);
    }
  }

  private void comeOut(int... indices) {
    for (int index : indices) {
      foresight.cameOut(FIRST + index);
    }
  }

  @Test
  void asksOnceForEachInTheOrderTheyAreShown() {
    read(41);
    foresight.begin(FIRST);
    foresight.ended();
    assertThat(asked).isEqualTo(stamps(41));
    for (int n = 1; n < 41; n++) {
      assertThat(foresight.unwanted(FIRST + n)).isEqualTo(n % 2 == 1);
      comeOut(n);
    }
    foresight.cameToEnd();
    assertThat(asked).hasSize(41);
    assertThat(foresight.givenUp()).isFalse();
  }

  @Test
  void asksAboutNoneThatAnEarlierOneMayFollow() {
    read(Foresight.MOST_HELD_BACK + 1);
    assertThat(asked).isEmpty();
    foresight.begin(FIRST);
    assertThat(asked).isEqualTo(stamps(1));
    foresight.read(FIRST + 40, false);
    assertThat(asked).isEqualTo(stamps(2));
    assertThat(foresight.unwanted(FIRST + 1)).isTrue();
    assertThat(foresight.unwanted(FIRST + 3)).isFalse();
  }

  @Test
  void asksAboutTheNextWhenItComesOut() {
    read(5);
    foresight.begin(FIRST);
    comeOut(1, 2);
    assertThat(asked).isEqualTo(stamps(3));
    assertThat(foresight.givenUp()).isFalse();
  }

  @Test
  void whatIsPassedOverIsNotMissed() {
    read(41);
    foresight.begin(FIRST);
    foresight.passedOver(FIRST + 1);
    comeOut(2);
    assertThat(foresight.givenUp()).isFalse();
  }

  @Test
  void isGivenUpAtAMissingPicture() {
    read(41);
    foresight.begin(FIRST);
    assertThat(foresight.unwanted(FIRST + 3)).isTrue();
    comeOut(2);
    assertThat(foresight.givenUp()).isTrue();
    assertThat(foresight.unwanted(FIRST + 3)).isFalse();
  }

  @Test
  void isGivenUpAtAPictureThatWasPassedOver() {
    read(41);
    foresight.begin(FIRST);
    foresight.passedOver(FIRST + 1);
    comeOut(1);
    assertThat(foresight.givenUp()).isTrue();
  }

  @Test
  void isGivenUpWhenTheLastOnesDoNotComeOut() {
    read(5);
    foresight.begin(FIRST);
    foresight.ended();
    comeOut(1, 2, 3);
    assertThat(foresight.givenUp()).isFalse();
    foresight.cameToEnd();
    assertThat(foresight.givenUp()).isTrue();
  }

  @Test
  void isGivenUpAtTimesThatAreOfNoUse() {
    read(41);
    foresight.begin(FIRST);
    // Before one that has been asked about.
    foresight.read(FIRST + 1, false);
    assertThat(foresight.givenUp()).isTrue();

    Foresight twice = new Foresight(this::even, TENTH);
    twice.read(FIRST, false);
    twice.read(FIRST, false);
    assertThat(twice.givenUp()).isTrue();

    Foresight other = new Foresight(this::even, TENTH);
    other.read(FIRST, false);
    other.begin(FIRST + 1);
    assertThat(other.givenUp()).isTrue();
  }

  @Test
  void whatLiesBeforeTheFirstPictureIsNotAskedAbout() {
    foresight.read(FIRST - 2, false);
    foresight.read(FIRST - 1, false);
    read(5);
    foresight.begin(FIRST);
    foresight.ended();
    assertThat(asked).isEqualTo(stamps(5));
    assertThat(foresight.givenUp()).isFalse();
  }

  @Test
  void tellsOfANextPictureThatOthersNeed() {
    List<OptionalDouble> told = new ArrayList<>();
    FrameChoice choice =
        new FrameChoice() {
          @Override
          public boolean wants(FrameStamp stamp) {
            throw new AssertionError("asked without what is known");
          }

          @Override
          public boolean wants(FrameStamp stamp, OptionalDouble insteadS) {
            told.add(insteadS);
            return true;
          }
        };
    Foresight knowing = new Foresight(choice, TENTH);
    boolean[] unreferenced = {false, true, false, true, true, false, true};
    for (int n = 0; n < unreferenced.length; n++) {
      knowing.read(FIRST + n, unreferenced[n]);
    }
    knowing.begin(FIRST);
    knowing.ended();
    List<OptionalDouble> expected =
        List.of(
            OptionalDouble.empty(),
            OptionalDouble.of(2 * TENTH),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.of(5 * TENTH),
            OptionalDouble.empty(),
            // Nothing follows it.
            OptionalDouble.empty());
    assertThat(told).isEqualTo(expected);
    for (int n = 0; n < unreferenced.length; n++) {
      assertThat(knowing.insteadS(FIRST + n)).isEqualTo(expected.get(n));
      knowing.decided(FIRST + n);
      assertThat(knowing.insteadS(FIRST + n)).isEmpty();
    }
  }

  @Test
  void noneForeseesNothing() {
    Foresight none = Foresight.none();
    none.read(FIRST, false);
    none.begin(FIRST);
    none.ended();
    assertThat(none.unwanted(FIRST)).isFalse();
    assertThat(none.givenUp()).isTrue();
  }
}
