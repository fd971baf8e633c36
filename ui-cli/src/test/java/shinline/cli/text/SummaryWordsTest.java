package shinline.cli.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shinline.metrics.judgement.SetJudge;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Limit;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;

class SummaryWordsTest {
  private static final Target TARGET = Target.preset(ShinPreset.UPRIGHT);
  private static final Limit SHIN =
      new Limit(Aspect.SHIN, Optional.of("upright"), -10, 10, 3, MeasureUnit.DEGREES);
  private static final Limit THIGH =
      new Limit(
          Aspect.THIGH, Optional.empty(), Double.NEGATIVE_INFINITY, 15, 3, MeasureUnit.DEGREES);
  private static final Finding MET = new Finding.Met(SHIN);

  private static Finding shinShort(double by) {
    return new Finding.Outside(SHIN, Limit.End.MIN, by, 1);
  }

  private static Finding thighHigh(double by) {
    return new Finding.Outside(THIGH, Limit.End.MAX, by, 1);
  }

  /** One rep a finding, numbered from 1. */
  private static String sentence(Finding... findings) {
    List<RepJudgement> reps = new ArrayList<>();
    for (Finding finding : findings) {
      reps.add(new RepJudgement(reps.size() + 1, List.of(finding)));
    }
    return said(TARGET, reps);
  }

  private static String said(Target target, List<RepJudgement> reps) {
    return SummaryWords.of(SetJudge.of(target, reps));
  }

  @Test
  void countsTheRepsAndNamesTheOneThing() {
    assertThat(
            sentence(
                MET,
                MET,
                thighHigh(2),
                MET,
                shinShort(12),
                new Finding.Unmeasured(SHIN, Gap.UNSEEN_AT_BOTTOM)))
        .isEqualTo(
            "6 reps: 3 hit the upright target, 1 near, 1 missed, 1 unclear; shin 12° short in rep"
                + " 5");
  }

  @Test
  void repsWithTheSameFaultAreNamedTogether() {
    assertThat(sentence(shinShort(4), MET, shinShort(12), thighHigh(30), shinShort(5)))
        .isEqualTo(
            "5 reps: 1 hit the upright target, 4 missed; shin up to 12° short in reps 1, 3 and 5");
    assertThat(sentence(thighHigh(8), thighHigh(6)))
        .isEqualTo("2 reps: all missed the upright target; thigh up to 8° too high in every rep");
  }

  @Test
  void equallyCommonFaultsAreRankedByTheMargin() {
    assertThat(sentence(shinShort(4), thighHigh(5)))
        .isEqualTo("2 reps: all missed the upright target; thigh 5° too high in rep 2");
  }

  @Test
  void whatCouldNotBeCalledIsSaid() {
    assertThat(
            sentence(
                MET,
                new Finding.TooClose(SHIN, Limit.End.MAX, 0.3, 2),
                new Finding.TooClose(SHIN, Limit.End.MAX, -0.3, 2)))
        .isEqualTo(
            "3 reps: 1 hit the upright target, 2 unclear; shin too close to call in reps 2 and 3");
    assertThat(sentence(MET, new Finding.WrongRange(Finding.Range.FULL)))
        .isEqualTo(
            "2 reps: 1 hit the upright target, 1 missed; short range instead of full in rep 2");
  }

  @Test
  void aCleanSetNeedsNoSecondHalf() {
    assertThat(sentence(MET, MET)).isEqualTo("2 reps: all hit the upright target");
    assertThat(sentence(MET)).isEqualTo("1 rep: hit the upright target");
    assertThat(sentence(shinShort(4)))
        .isEqualTo("1 rep: missed the upright target; shin 4° short in rep 1");
  }

  @Test
  void withoutATargetNothingIsClaimed() {
    assertThat(said(Target.none(), List.of(new RepJudgement(1, List.of()))))
        .isEqualTo("1 rep measured, no target set");
    assertThat(said(TARGET, List.of())).isEqualTo("no reps");
  }

  @Test
  void aTargetOfDepthAloneIsNamedByItsDepth() {
    Target depth =
        new Target(
            Optional.empty(),
            DepthTarget.quarterRange(),
            Target.none().tempo(),
            Optional.empty(),
            Target.Margin.standard());
    assertThat(said(depth, List.of(new RepJudgement(1, 1, List.of()))))
        .isEqualTo("1 rep: hit the short-range target");
  }
}
