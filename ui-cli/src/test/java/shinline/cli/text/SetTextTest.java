package shinline.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import shinline.cli.Sets;
import shinline.cli.outcome.ClipReport;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;

class SetTextTest {
  private static String text(Typography signs, Paint paint, Units units) {
    return String.join(
        "\n", new SetText(new Layout(signs, paint, units)).lines(Sets.measured("x.mp4")));
  }

  @Test
  void theSentenceComesFirstAndValuesCarryTheirInterval() {
    String text = text(Typography.RICH, Paint.NONE, Units.METRIC);
    assertThat(text.lines().toList().get(1))
        .isEqualTo("2 reps: 1 hit the past-toe target, 1 unclear; front heel lifts in rep 2.");
    assertThat(text).contains("5.1 ±2.5").contains("12.3 ±1.2").contains("3.00 ±0.10");
    assertThat(text).contains("left leg in front, far from the camera").contains("-1.3°");
    assertThat(text).contains("Note: the clip ends early");
  }

  @Test
  void aGapShowsADashAndItsReason() {
    String text = text(Typography.RICH, Paint.NONE, Units.METRIC);
    assertThat(text)
        .contains(
            "– Rep 2: Rear knee not measured: the points it needs were not seen at the bottom.");
    assertThat(text).doesNotContain("-0.0");
  }

  @Test
  void aFlagSaysWhenAndByHowMuch() {
    assertThat(text(Typography.RICH, Paint.NONE, Units.METRIC))
        .contains("Rep 2, 3.2 s (frame 96): front heel lifts, 2.5 cm against a limit of 1.0 cm");
  }

  private static String text(Target target) {
    return String.join(
        "\n",
        new SetText(new Layout(Typography.RICH, Paint.NONE, Units.METRIC))
            .lines(Sets.asking(target)));
  }

  @Test
  void aTopAloneIsToldAndHasItsColumn() {
    assertThat(text(Sets.TOP_ALONE)).contains("top 0.5 s to 1.5 s.").contains(" Top ");
    assertThat(text(Target.preset(ShinPreset.OVER_TOE))).doesNotContain(" Top ");
  }

  @Test
  void aShortRangeAloneIsTold() {
    assertThat(text(Sets.SHORT_RANGE_ALONE)).contains("--target), short range.");
    // The full range is told by the thigh that goes with it.
    assertThat(text(Target.preset(ShinPreset.OVER_TOE)))
        .contains("thigh at most 15.0°.")
        .doesNotContain("full range");
  }

  @Test
  void withNothingAskedForNoRepIsCalledAHit() {
    ClipReport.Measured judged = Sets.measured("x.mp4");
    SetText text = new SetText(new Layout(Typography.RICH, Paint.NONE, Units.METRIC));
    assertThat(String.join("\n", text.lines(judged))).contains("  hit");
    assertThat(String.join("\n", text.lines(Sets.free("x.mp4"))))
        .doesNotContain("  hit")
        .doesNotContain("  miss");
  }

  @Test
  void inchesAreCentimetresOver254() {
    assertThat(text(Typography.RICH, Paint.NONE, Units.IMPERIAL)).contains("2.0 ±1.0");
  }

  @Test
  void plainSignsAreAllAscii() {
    String text = text(Typography.PLAIN, Paint.NONE, Units.METRIC);
    assertThat(StandardCharsets.US_ASCII.newEncoder().canEncode(text)).isTrue();
    assertThat(text).contains("5.1 +-2.5");
    assertThat(Typography.of(StandardCharsets.US_ASCII)).isEqualTo(Typography.PLAIN);
    assertThat(Typography.of(StandardCharsets.UTF_8)).isEqualTo(Typography.RICH);
  }

  @Test
  void colourAddsCodesAndNothingElse() {
    String coloured = text(Typography.RICH, Paint.COLOUR, Units.METRIC);
    assertThat(coloured).contains("\u001b[");
    assertThat(coloured.replaceAll("\u001b\\[[0-9]*m", ""))
        .isEqualTo(text(Typography.RICH, Paint.NONE, Units.METRIC));
  }

  @Test
  void cautionsAreSaidInFull() {
    String text =
        String.join(
            "\n", new SetText(new Layout(Typography.PLAIN, Paint.NONE, Units.METRIC)).closing());
    assertThat(text)
        .contains("not a diagnosis", "clinician", "spotter", "patellar tendon", "Local rules")
        .contains("knee caving inward", "does not measure the spine");
  }
}
