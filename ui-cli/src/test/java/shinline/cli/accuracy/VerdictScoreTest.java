package shinline.cli.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shinline.metrics.judgement.RepReadings;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.TempoReading;
import shinline.metrics.result.Verdict;

/** Against the upright target: shin within 10°, near up to 13°; thigh at most 15°, near to 18°. */
class VerdictScoreTest {
  private static final AskedTarget UPRIGHT = AskedTarget.ALL.get(0);

  private static TrueRep truth(double shin, double thigh) {
    Map<Scored, Double> values = new EnumMap<>(Scored.class);
    values.put(Scored.SHIN, shin);
    values.put(Scored.THIGH, thigh);
    values.put(Scored.LOWERING, 2.0);
    values.put(Scored.HOLD, 1.0);
    values.put(Scored.DRIVE, 1.0);
    return new TrueRep(0, 2, 3, 4, values, false, Set.of());
  }

  private static RepReadings told(double shin, double thigh, double plusMinus) {
    Reading missing = Reading.missing(Gap.NOT_READ);
    return new RepReadings(
        1,
        Map.of(
            Measure.SHIN, Reading.of(shin, plusMinus), Measure.THIGH, Reading.of(thigh, plusMinus)),
        new TempoReading(missing, missing, missing, missing),
        false);
  }

  private static VerdictScore rep(TrueRep truth, RepReadings told) {
    List<VerdictScore> scores = VerdictScore.of(UPRIGHT, 1, truth, Optional.of(told));
    assertThat(scores.get(0).aspect()).isEmpty();
    return scores.get(0);
  }

  @ParameterizedTest
  @CsvSource({
    // true shin and thigh; told shin with its ±; true verdict; counts, right, unclear, wrong
    "5, 5, 7, 2, HIT, true, true, false, false",
    "5, 5, 9.5, 2, HIT, true, false, true, false",
    "5, 5, 11.5, 2, HIT, true, false, false, true",
    "12.5, 5, 12, 2, NEAR, true, true, false, false",
    "12.5, 5, 14, 2, NEAR, true, false, false, true",
    "15, 5, 15, 2, MISS, true, true, false, false",
    // Near a limit on either side a verdict does not count.
    "8.5, 5, 8, 2, HIT, false, true, false, false",
    "11.5, 5, 11.5, 2, NEAR, false, true, false, false",
    // The shin is near its limit, but the thigh settles the rep.
    "8.5, 25, 8, 2, MISS, true, true, false, false"
  })
  void countsWhatIsClearOfTheLimitThatDecides(
      double shin,
      double thigh,
      double toldShin,
      double plusMinus,
      Verdict is,
      boolean counts,
      boolean right,
      boolean unclear,
      boolean wrong) {
    VerdictScore score = rep(truth(shin, thigh), told(toldShin, thigh, plusMinus));
    assertThat(score.is()).isEqualTo(is);
    assertThat(score.counts()).as("counts").isEqualTo(counts);
    assertThat(score.right()).as("right").isEqualTo(right);
    assertThat(score.unclear()).as("unclear").isEqualTo(unclear);
    assertThat(score.wrong()).as("wrong").isEqualTo(wrong);
  }
}
