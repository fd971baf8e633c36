package shinline.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import shinline.cli.Sets;
import shinline.cli.outcome.ClipReport;
import shinline.metrics.result.Flag;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
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
            "– Rear knee not measured in rep 2: the points it needs were not seen at the bottom.");
    assertThat(text).doesNotContain("-0.0");
  }

  @Test
  void aFlagSaysWhenAndByHowMuch() {
    assertThat(text(Typography.RICH, Paint.NONE, Units.METRIC))
        .contains("Front heel lifts in rep 2: 2.5 cm, should be at most 1.0 cm (at 3.2 s).");
  }

  /** Rep 2 of the usual set four times over, each with its own heel. */
  private static ClipReport.Measured heels(double... risesCm) {
    ClipReport.Measured report = Sets.measured("x.mp4");
    SetResult set = report.set();
    RepResult like = set.reps().get(1);
    Flag heel = like.flags().get(0);
    List<RepResult> reps = new ArrayList<>();
    for (double rise : risesCm) {
      int rep = reps.size() + 1;
      Flag flag =
          new Flag(heel.kind(), 10.0 * rep, heel.frame(), rise, heel.limit(), heel.unit(), 1);
      reps.add(
          new RepResult(
              rep,
              like.times(),
              like.tempo(),
              like.atBottom(),
              like.drive(),
              like.shortRange(),
              new RepJudgement(rep, like.judgement().findings()),
              rise > 0 ? List.of(flag) : List.of()));
    }
    return new ClipReport.Measured(
        report.clip(),
        Sets.set(
            set.setUp(),
            set.target(),
            reps,
            set.trend(),
            set.fading(),
            set.summary(),
            set.series()),
        report.warnings());
  }

  @Test
  void aFaultOfSeveralRepsIsOneLineWithItsRangeAndItsWorst() {
    String text =
        String.join(
            "\n",
            new SetText(new Layout(Typography.RICH, Paint.NONE, Units.METRIC))
                .lines(heels(2.5, 0, 4.0, 3.1)));
    assertThat(text)
        .containsOnlyOnce("Front heel lifts")
        .contains(
            "Front heel lifts in reps 1, 3 and 4: 2.5 cm to 4.0 cm, should be at most 1.0 cm"
                + " (worst in rep 3, at 30.0 s).")
        .containsOnlyOnce("Knee short of the past-toe band in every rep")
        .containsOnlyOnce("Rear knee not measured in every rep");
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
