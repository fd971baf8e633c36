package shinline.cli.picture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.cli.text.Units;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Flag;
import shinline.metrics.result.MeasureUnit;

class FlagCaptionTest {
  private static FlagCaption caption(
      FlagKind kind, double value, double limit, MeasureUnit unit, Units units) {
    return FlagCaption.of(new Flag(kind, 1, 30, value, limit, unit, 0.9), units);
  }

  private static FlagCaption knee(double value, double limit) {
    return caption(FlagKind.SHIN_OFF_TARGET, value, limit, MeasureUnit.CENTIMETRES, Units.METRIC);
  }

  @ParameterizedTest
  @EnumSource
  void everyKindHasACaptionWithItsNumbers(FlagKind kind) {
    FlagCaption caption = caption(kind, 14, 9, MeasureUnit.DEGREES, Units.METRIC);
    assertThat(caption.title() + ", " + caption.limit()).contains("14°").contains("9°");
  }

  @Test
  void lengthsFollowTheUnits() {
    assertThat(caption(FlagKind.HEEL_RISE, 4.7, 2.2, MeasureUnit.CENTIMETRES, Units.METRIC))
        .isEqualTo(new FlagCaption("Heel up 4.7 cm", "limit 2.2 cm"));
    assertThat(caption(FlagKind.HEEL_RISE, 4.7, 2.2, MeasureUnit.CENTIMETRES, Units.IMPERIAL))
        .isEqualTo(new FlagCaption("Heel up 1.9 in", "limit 0.9 in"));
  }

  @Test
  void aShinSaysWhichWayItIsOff() {
    assertThat(caption(FlagKind.SHIN_OFF_TARGET, 14, 10, MeasureUnit.DEGREES, Units.METRIC))
        .isEqualTo(new FlagCaption("Shin off target: 14°", "at most 10°"));
    assertThat(caption(FlagKind.SHIN_OFF_TARGET, -12, -10, MeasureUnit.DEGREES, Units.METRIC))
        .isEqualTo(new FlagCaption("Shin off target: -12°", "at least -10°"));
  }

  @Test
  void aKneeIsTheOtherWayRoundBehindTheToe() {
    assertThat(knee(8, 5))
        .isEqualTo(new FlagCaption("Knee 8.0 cm past the toe", "at most 5.0 cm past it"));
    assertThat(knee(2, 5))
        .isEqualTo(new FlagCaption("Knee 2.0 cm past the toe", "at least 5.0 cm past it"));
    assertThat(knee(-6, -3))
        .isEqualTo(new FlagCaption("Knee 6.0 cm behind the toe", "at most 3.0 cm behind it"));
    assertThat(knee(-1, -3))
        .isEqualTo(new FlagCaption("Knee 1.0 cm behind the toe", "at least 3.0 cm behind it"));
  }
}
