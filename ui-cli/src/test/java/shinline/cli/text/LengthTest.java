package shinline.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class LengthTest {
  /** An inch is 2.54 cm by definition, so only rounding of doubles is left. */
  private static final Offset<Double> EXACT = Offset.offset(1e-12);

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "178cm | 1.78",
        "178 cm | 1.78",
        "1.78m | 1.78",
        "1,78 M | 1.78",
        "1780mm | 1.78",
        "5ft10in | 1.778",
        "5 ft 10 in | 1.778",
        "5'10\" | 1.778",
        "5'10 | 1.778",
        "5’10” | 1.778",
        "6ft | 1.8288",
        "70in | 1.778",
        "17\" | 0.4318",
        "5ft10.5in | 1.7907",
      })
  void readsWhatCoachesType(String typed, double metres) {
    assertThat(Length.parse(typed).orElseThrow().metres()).isCloseTo(metres, EXACT);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"178", "1.78", "", "cm", "tall", "-178cm", "0cm", "5ft13in", "NaNcm", "1e3cm"})
  void refusesTheRest(String typed) {
    assertThat(Length.parse(typed)).isEmpty();
  }

  @Test
  void saysItselfInBothUnits() {
    assertThat(new Length(1.778)).hasToString("177.8 cm (70.0 in)");
  }
}
