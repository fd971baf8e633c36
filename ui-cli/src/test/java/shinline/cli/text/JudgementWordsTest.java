package shinline.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Limit;
import shinline.metrics.result.MeasureUnit;

class JudgementWordsTest {
  private static final double OPEN = Double.POSITIVE_INFINITY;
  private static final Limit UPRIGHT =
      new Limit(Aspect.SHIN, Optional.of("upright"), -10, 10, 3, MeasureUnit.DEGREES);
  private static final Limit OVER_TOE =
      new Limit(Aspect.KNEE, Optional.of("over-toe"), -3, 5, 2, MeasureUnit.CENTIMETRES);

  private static String said(Finding finding) {
    return JudgementWords.reason(finding).orElse("");
  }

  private static Limit limit(Aspect aspect, double min, double max) {
    return new Limit(aspect, Optional.empty(), min, max, 1, aspect.unit());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "MAX | 6 | shin 6° past the upright band (at most 10°)",
        "MIN | 12.4 | shin 12° short of the upright band (at least -10°)",
        "MAX | 1.25 | shin 1.3° past the upright band (at most 10°)",
      })
  void whatIsOutsideIsSaidWithAmountDirectionAndLimit(Limit.End end, double by, String reason) {
    assertThat(said(new Finding.Outside(UPRIGHT, end, by, 2))).isEqualTo(reason);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "MAX | 0.5 | shin 0.5° outside its limit, too close to call (at most 10°, sure to within 2°)",
        "MIN | -0.5 | shin 0.5° inside its limit, too close to call (at least -10°, sure to within 2°)",
        "MAX | 0 | shin 0° inside its limit, too close to call (at most 10°, sure to within 2°)",
        "MAX | 0.01 | shin less than 0.1° outside its limit, too close to call (at most 10°, sure to"
            + " within 2°)",
      })
  void whatIsTooCloseIsSaidWithItsInterval(Limit.End end, double beyond, String reason) {
    assertThat(said(new Finding.TooClose(UPRIGHT, end, beyond, 2))).isEqualTo(reason);
  }

  @Test
  void limitsWithoutANameHaveWordsForEachSide() {
    assertThat(said(new Finding.Outside(limit(Aspect.THIGH, -OPEN, 15), Limit.End.MAX, 7, 2)))
        .isEqualTo("thigh 7° too high (at most 15°)");
    assertThat(said(new Finding.Outside(limit(Aspect.HIP_TRAVEL, 30, OPEN), Limit.End.MIN, 4, 1)))
        .isEqualTo("hip travel 4 cm too little (at least 30 cm)");
    assertThat(said(new Finding.Outside(limit(Aspect.REAR_KNEE, -OPEN, 8), Limit.End.MAX, 1.5, 1)))
        .isEqualTo("rear knee 1.5 cm too high (at most 8 cm)");
    assertThat(said(new Finding.Outside(limit(Aspect.LOWERING, 4.6, 6), Limit.End.MIN, 0.6, 0.1)))
        .isEqualTo("lowering 0.6 s too short (at least 4.6 s)");
    assertThat(said(new Finding.Outside(limit(Aspect.TRUNK, 5, 40), Limit.End.MAX, 12, 1)))
        .isEqualTo("trunk 12° too far forward (at most 40°)");
  }

  @Test
  void aCentimetreBandWithoutAScaleSaysWhatIsKnownAndAsksForOne() {
    assertThat(said(new Finding.Unmeasured(OVER_TOE, Gap.NO_SCALE, Optional.of(-12.3))))
        .isEqualTo(
            "knee not measured: there is no scale for centimetres (it is 12 % of foot length behind"
                + " the toe); give --height");
    assertThat(said(new Finding.Unmeasured(OVER_TOE, Gap.NO_SCALE, Optional.of(4.0))))
        .contains("(it is 4 % of foot length past the toe)");
    assertThat(said(new Finding.Unmeasured(OVER_TOE, Gap.UNSEEN_AT_BOTTOM)))
        .isEqualTo("knee not measured: the points it needs were not seen at the bottom");
  }

  @Test
  void theRangeHasItsOwnWordsAndWhatIsMetHasNone() {
    assertThat(said(new Finding.WrongRange(Finding.Range.FULL)))
        .isEqualTo("short range, full range was asked for");
    assertThat(said(new Finding.WrongRange(Finding.Range.SHORT)))
        .isEqualTo("full range, short range was asked for");
    assertThat(JudgementWords.reason(new Finding.Met(UPRIGHT))).isEmpty();
  }
}
