package shinline.cli.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import shinline.metrics.fault.FlagKind;

class WordsTest {
  @Test
  void saysWhatTheBundleHoldsForAKind() {
    assertThat(Words.key(FlagKind.HEEL_RISE, "name")).isEqualTo("flag-kind.heel-rise.name");
    assertThat(Words.of(FlagKind.HEEL_RISE, "name")).isEqualTo("front heel lifts");
  }

  @Test
  void aMissingKeyIsAProgrammingError() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> Words.say("no.such.key"))
        .withMessageContaining("no.such.key");
  }
}
