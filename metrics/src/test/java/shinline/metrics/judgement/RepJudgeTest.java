package shinline.metrics.judgement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Limit;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.TempoReading;
import shinline.metrics.result.Verdict;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.ShinTarget;
import shinline.metrics.target.Target;
import shinline.metrics.target.TempoTarget;

class RepJudgeTest {
  private static final TempoReading TEMPO =
      new TempoReading(
          Reading.of(4, 0.1),
          Reading.of(2, 0.1),
          Reading.of(0.7, 0.1),
          Reading.missing(Gap.NO_REP_FOLLOWS));

  /** Upright from -10 to 10 degrees, margin 3 degrees. */
  private static final Target UPRIGHT = shinOnly(ShinPreset.UPRIGHT.target());

  private static Target shinOnly(ShinTarget shin) {
    return new Target(
        Optional.of(shin),
        DepthTarget.any(),
        TempoTarget.any(),
        Optional.empty(),
        Target.Margin.standard());
  }

  private static Target depthOnly(DepthTarget depth) {
    return new Target(
        Optional.empty(), depth, TempoTarget.any(), Optional.empty(), Target.Margin.standard());
  }

  private static Target tempoOnly(TempoTarget tempo) {
    return new Target(
        Optional.empty(), DepthTarget.any(), tempo, Optional.empty(), Target.Margin.standard());
  }

  private static RepJudgement judge(Target target, Map<Measure, Reading> atBottom) {
    return judge(target, atBottom, false);
  }

  private static RepJudgement judge(
      Target target, Map<Measure, Reading> atBottom, boolean shortRange) {
    return new RepJudge(target, JudgeParameters.standard())
        .judge(new RepReadings(1, atBottom, TEMPO, shortRange));
  }

  private static Verdict shin(double value, double plusMinus) {
    return judge(UPRIGHT, Map.of(Measure.SHIN, Reading.of(value, plusMinus)))
        .verdict()
        .orElseThrow();
  }

  /** ± is 2, so a degree on either side of a limit is too close to call. */
  @ParameterizedTest
  @CsvSource({
    "0, HIT",
    "9, HIT",
    "9.1, UNCLEAR",
    "10, UNCLEAR",
    "10.9, UNCLEAR",
    "11, NEAR",
    "13, NEAR",
    "13.1, MISS",
    "40, MISS",
    "-9, HIT",
    "-9.1, UNCLEAR",
    "-11, NEAR",
    "-13.1, MISS"
  })
  void aValueIsJudgedByItsDistanceFromTheLimit(double value, Verdict expected) {
    assertThat(shin(value, 2)).isEqualTo(expected);
  }

  @Test
  void anExactValueOnTheLimitIsInside() {
    assertThat(shin(10, 0)).isEqualTo(Verdict.HIT);
  }

  @Test
  void aWideIntervalLeavesNoRoomForNear() {
    assertThat(shin(13.5, 8)).isEqualTo(Verdict.UNCLEAR);
    assertThat(shin(14.5, 8)).isEqualTo(Verdict.MISS);
    assertThat(shin(0, 30)).isEqualTo(Verdict.UNCLEAR);
  }

  @Test
  void openEndsAreNeverBroken() {
    Target pastToe = shinOnly(ShinPreset.PAST_TOE.target());
    assertThat(judge(pastToe, Map.of(Measure.KNEE_PAST_TOE, Reading.of(90, 1))).verdict())
        .contains(Verdict.HIT);
    Target anything =
        shinOnly(
            new ShinTarget.AngleBand("any", Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY));
    assertThat(judge(anything, Map.of(Measure.SHIN, Reading.of(3, 50))).verdict())
        .contains(Verdict.HIT);
  }

  @Test
  void whatIsOutsideIsToldWithItsAmountAndEnd() {
    assertThat(judge(UPRIGHT, Map.of(Measure.SHIN, Reading.of(-22.5, 2))).findings())
        .singleElement()
        .isInstanceOfSatisfying(
            Finding.Outside.class,
            f -> {
              assertThat(f.end()).isEqualTo(Limit.End.MIN);
              assertThat(f.by()).isEqualTo(12.5);
              assertThat(f.bound()).isEqualTo(-10);
              assertThat(f.value()).isEqualTo(-22.5);
              assertThat(f.plusMinus()).isEqualTo(2);
            });
    assertThat(judge(UPRIGHT, Map.of(Measure.SHIN, Reading.of(9.5, 2))).findings())
        .singleElement()
        .isInstanceOfSatisfying(
            Finding.TooClose.class, f -> assertThat(f.beyond()).isEqualTo(-0.5));
  }

  @Test
  void aCentimetreBandWithoutAScaleAsksForOne() {
    Map<Measure, Reading> readings =
        Map.of(
            Measure.KNEE_PAST_TOE, Reading.missing(Gap.NO_SCALE),
            Measure.KNEE_PAST_TOE_FOOT, Reading.of(-12.3, 2));
    RepJudgement rep = judge(shinOnly(ShinPreset.OVER_TOE.target()), readings);
    assertThat(rep.verdict()).contains(Verdict.UNCLEAR);
    assertThat(rep.findings())
        .singleElement()
        .isInstanceOfSatisfying(
            Finding.Unmeasured.class,
            f -> {
              assertThat(f.gap()).isEqualTo(Gap.NO_SCALE);
              assertThat(f.kneePastToeFootPct()).contains(-12.3);
            });
  }

  @Test
  void aMeasureThatWasNotSeenIsUnclearForItsOwnReason() {
    RepJudgement rep = judge(UPRIGHT, Map.of(Measure.SHIN, Reading.missing(Gap.UNSEEN_AT_BOTTOM)));
    assertThat(rep.verdict()).contains(Verdict.UNCLEAR);
    assertThat(gaps(rep)).containsExactly(Gap.UNSEEN_AT_BOTTOM);
    assertThat(gaps(judge(UPRIGHT, Map.of()))).containsExactly(Gap.NOT_READ);
  }

  private static List<Gap> gaps(RepJudgement rep) {
    return rep.findings().stream()
        .flatMap(f -> f instanceof Finding.Unmeasured u ? Stream.of(u.gap()) : Stream.empty())
        .toList();
  }

  /** Aspects of what is outside, worst first. */
  private static List<Aspect> outside(RepJudgement rep) {
    return rep.findings().stream()
        .filter(f -> f instanceof Finding.Outside)
        .map(f -> f.aspect().orElseThrow())
        .toList();
  }

  @Test
  void eachDepthLimitIsJudgedAlone() {
    DepthTarget own =
        new DepthTarget("own", Optional.of(15.0), Optional.of(8.0), Optional.of(30.0), false);
    RepJudgement rep =
        judge(
            depthOnly(own),
            Map.of(
                Measure.THIGH, Reading.of(22, 2),
                Measure.REAR_KNEE_HEIGHT, Reading.of(9.5, 1),
                Measure.HIP_TRAVEL, Reading.of(26, 1)));
    assertThat(rep.verdict()).contains(Verdict.MISS);
    assertThat(outside(rep)).containsExactly(Aspect.THIGH, Aspect.HIP_TRAVEL, Aspect.REAR_KNEE);
  }

  @Test
  void aShortRangeRepMissesFullDepthEvenWhenTheThighWasNotSeen() {
    RepJudgement rep =
        judge(
            depthOnly(DepthTarget.full()),
            Map.of(Measure.THIGH, Reading.missing(Gap.UNSEEN_AT_BOTTOM)),
            true);
    assertThat(rep.verdict()).contains(Verdict.MISS);
    assertThat(rep.findings().get(0)).isEqualTo(new Finding.WrongRange(Finding.Range.FULL));
    assertThat(gaps(rep)).containsExactly(Gap.UNSEEN_AT_BOTTOM);
  }

  @Test
  void shortRangeIsJudgedByItsOwnTarget() {
    Target target = depthOnly(DepthTarget.quarterRange());
    assertThat(judge(target, Map.of(), true).verdict()).contains(Verdict.HIT);
    RepJudgement full = judge(target, Map.of(), false);
    assertThat(full.verdict()).contains(Verdict.MISS);
    assertThat(full.findings()).containsExactly(new Finding.WrongRange(Finding.Range.SHORT));
  }

  @Test
  void ownDepthLimitsSpeakForThemselves() {
    DepthTarget own =
        new DepthTarget("own", Optional.empty(), Optional.empty(), Optional.of(10.0), false);
    assertThat(judge(depthOnly(own), Map.of(Measure.HIP_TRAVEL, Reading.of(14, 1)), true).verdict())
        .contains(Verdict.HIT);
  }

  @Test
  void tempoPhasesAreJudgedInSeconds() {
    TempoTarget tempo =
        new TempoTarget(
            Optional.of(new TempoTarget.Phase(4.6, 6)),
            Optional.of(new TempoTarget.Phase(0, 1.8)),
            Optional.of(new TempoTarget.Phase(0, Double.POSITIVE_INFINITY)),
            Optional.empty());
    RepJudgement rep = judge(tempoOnly(tempo), Map.of());
    assertThat(rep.verdict()).contains(Verdict.MISS);
    assertThat(outside(rep)).containsExactly(Aspect.LOWERING, Aspect.HOLD);
  }

  @Test
  void aPhaseMayLastNoTimeAtAll() {
    TempoTarget touchAndGo =
        new TempoTarget(
            Optional.empty(),
            Optional.of(new TempoTarget.Phase(0, 0.5)),
            Optional.empty(),
            Optional.empty());
    TempoReading quick =
        new TempoReading(
            Reading.of(1, 0.1), Reading.of(0.02, 0.1), Reading.of(1, 0.1), Reading.of(1, 0.1));
    assertThat(
            new RepJudge(tempoOnly(touchAndGo), JudgeParameters.standard())
                .judge(new RepReadings(1, Map.of(), quick, false))
                .verdict())
        .contains(Verdict.HIT);
  }

  @Test
  void theLastRepHasNoTopToMiss() {
    TempoTarget tempo =
        new TempoTarget(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(new TempoTarget.Phase(1, 2)));
    assertThat(judge(tempoOnly(tempo), Map.of()).verdict()).contains(Verdict.HIT);
  }

  @Test
  void trunkLimitsWorkBothWays() {
    Target target =
        new Target(
            Optional.empty(),
            DepthTarget.any(),
            TempoTarget.any(),
            Optional.of(new Target.TrunkBand(5, 40)),
            Target.Margin.standard());
    assertThat(trunk(target, -1)).isEqualTo(Limit.End.MIN);
    assertThat(trunk(target, 52)).isEqualTo(Limit.End.MAX);
  }

  /** The end that a trunk lean is outside of. */
  private static Limit.End trunk(Target target, double leanDeg) {
    Finding only =
        judge(target, Map.of(Measure.TRUNK_LEAN, Reading.of(leanDeg, 1))).findings().get(0);
    return ((Finding.Outside) only).end();
  }

  @Test
  void theRepIsAsGoodAsItsWorstLimit() {
    Limit limit = new Limit(Aspect.HOLD, Optional.empty(), 1, 2, 0.3, Measure.SHIN.unit());
    Finding met = new Finding.Met(limit);
    Finding near = new Finding.Outside(limit, Limit.End.MAX, 0.2, 0.1);
    Finding unclear = new Finding.Unmeasured(limit, Gap.UNSEEN_AT_BOTTOM);
    Finding miss = new Finding.Outside(limit, Limit.End.MAX, 0.4, 0.1);
    assertThat(new RepJudgement(1, List.of(met, met)).verdict()).contains(Verdict.HIT);
    assertThat(new RepJudgement(1, List.of(met, near)).verdict()).contains(Verdict.NEAR);
    assertThat(new RepJudgement(1, List.of(near, unclear, met)).verdict())
        .contains(Verdict.UNCLEAR);
    assertThat(new RepJudgement(1, List.of(near, unclear, miss, met)).verdict())
        .contains(Verdict.MISS);
  }

  @Test
  void nothingAskedIsNeitherHitNorMissed() {
    assertThat(judge(Target.none(), Map.of()).verdict()).isEmpty();
  }

  @Test
  void parametersCheckThemselves() {
    assertThatThrownBy(() -> new JudgeParameters(1.5)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new JudgeParameters(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void aWiderIntervalOnlyEverTakesAVerdictAway(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      double value = random.nextDouble(-40, 40);
      double narrow = random.nextDouble(0, 10);
      double wide = narrow + random.nextDouble(0, 10);
      assertThat(shin(value, wide)).isIn(shin(value, narrow), Verdict.UNCLEAR);
    }
  }

  /** Going outward, a value is met, then undecided, then near, then missed; never back. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void furtherOutIsNeverBetter(long seed) {
    List<Verdict> outward = List.of(Verdict.HIT, Verdict.UNCLEAR, Verdict.NEAR, Verdict.MISS);
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      double plusMinus = random.nextDouble(0, 10);
      double inner = random.nextDouble(0, 40);
      double outer = inner + random.nextDouble(0, 10);
      int sign = random.nextBoolean() ? 1 : -1;
      assertThat(outward.indexOf(shin(sign * outer, plusMinus)))
          .isGreaterThanOrEqualTo(outward.indexOf(shin(sign * inner, plusMinus)));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5})
  void aWiderMarginNeverMakesItWorse(long seed) {
    Random random = new Random(seed);
    for (int i = 0; i < 2000; i++) {
      double margin = random.nextDouble(0, 5);
      Limit tight = limit(margin);
      Limit loose = limit(margin + random.nextDouble(0, 5));
      double by = random.nextDouble(0, 10);
      assertThat(
              RepJudgement.severity(new Finding.Outside(loose, Limit.End.MAX, by, 0.1).verdict()))
          .isLessThanOrEqualTo(
              RepJudgement.severity(new Finding.Outside(tight, Limit.End.MAX, by, 0.1).verdict()));
    }
  }

  /** With errors as large as ± says, a called side of the limit is wrong at most 1 time in 6. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.5, 2, 4, 8})
  void aCalledSideIsRightAsOftenAsTheRuleClaims(double trueDistance) {
    Random random = new Random(7);
    double plusMinus = 4;
    int wrong = 0;
    int n = 20_000;
    for (int i = 0; i < n; i++) {
      double seen = 10 + trueDistance + random.nextGaussian() * plusMinus / 1.96;
      if (shin(seen, plusMinus) == Verdict.HIT) {
        wrong++;
      }
    }
    // 0.1635 = P(error beyond 0.98 standard deviations), plus three standard errors of the count.
    assertThat(wrong / (double) n).isLessThan(0.1635 + 0.008);
  }

  @Test
  void anythingMeasurableCanBeJudged() {
    Random random = new Random(11);
    Map<Measure, Reading> readings = new EnumMap<>(Measure.class);
    for (int i = 0; i < 500; i++) {
      for (Measure measure : Measure.values()) {
        readings.put(
            measure,
            random.nextInt(4) == 0
                ? Reading.missing(Gap.UNSEEN_AT_BOTTOM)
                : Reading.of(random.nextGaussian() * 1e3, random.nextDouble() * 100));
      }
      RepJudgement rep =
          judge(Target.preset(ShinPreset.values()[i % 3]), readings, random.nextBoolean());
      assertThat(rep.findings().stream().allMatch(f -> f instanceof Finding.Met))
          .isEqualTo(rep.verdict().equals(Optional.of(Verdict.HIT)));
    }
  }

  private static Limit limit(double margin) {
    return new Limit(Aspect.SHIN, Optional.empty(), -10, 10, margin, Measure.SHIN.unit());
  }
}
