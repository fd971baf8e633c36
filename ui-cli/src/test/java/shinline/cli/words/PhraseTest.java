package shinline.cli.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class PhraseTest {
  private static String fill(String text, Object... arguments) {
    return Phrase.parse("key", text).fill(arguments);
  }

  @Test
  void takesArgumentsByNumber() {
    assertThat(fill("{1} before {0}, then {1}", "b", 1)).isEqualTo("1 before b, then 1");
  }

  @Test
  void quotesAndPerCentStandForThemselves() {
    assertThat(fill("the athlete's '{0}' at 5 %", "$1\\")).isEqualTo("the athlete's '$1\\' at 5 %");
  }

  @Test
  void formatsFractionsWithAPoint() {
    assertThat(fill("{0%.1f} s, {1%+.0f}°", 2.25, 3.2)).isEqualTo("2.3 s, +3°");
  }

  @Test
  void choosesTheFormByCount() {
    assertThat(fill("{0} {0|rep|reps}", 1)).isEqualTo("1 rep");
    assertThat(fill("{0} {0|rep|reps}", 0)).isEqualTo("0 reps");
    assertThat(fill("miss{0||es}", 2)).isEqualTo("misses");
  }

  @Test
  void aTextOfAKindTakesWhatItNeeds() {
    assertThat(Phrase.parse("key", "at most {1}").fillFrom("a", "b", "c")).isEqualTo("at most b");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Phrase.parse("key", "{1}").fillFrom("too few"));
  }

  @Test
  void doubledBracesStandForBraces() {
    assertThat(fill("write {{a: {0}}}, not {{}}", 1)).isEqualTo("write {a: 1}, not {}");
  }

  @Test
  void refusesWhatDoesNotFit() {
    assertThatIllegalArgumentException().isThrownBy(() -> fill("{0}")).withMessageContaining("key");
    assertThatIllegalArgumentException().isThrownBy(() -> fill("plain", "too much"));
    assertThatIllegalArgumentException().isThrownBy(() -> fill("{0}", 1.0));
    assertThatIllegalArgumentException().isThrownBy(() -> fill("{0%d}", 1.0));
    assertThatIllegalArgumentException().isThrownBy(() -> fill("{1}", 1));
    assertThatIllegalArgumentException().isThrownBy(() -> fill("{x}", 1));
    assertThatIllegalArgumentException().isThrownBy(() -> fill("{0", 1));
  }
}
