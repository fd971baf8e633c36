package shinline.cli.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import shinline.cli.Sets;
import shinline.cli.outcome.ClipReport;
import shinline.metrics.fault.Baseline;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.result.DriveReading;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.result.SeriesTable.Column;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.SetSummary;
import shinline.metrics.result.TempoReading;

/** Two reps of four seconds whose lean is that of the second: 2° in second 2, 3° in second 3. */
class TrunkChangeTest {
  private static final double FIRST_DEG = 2.4;
  private static final double SECOND_DEG = 7.1;

  private final RepResult first = rep(1, 0, FIRST_DEG);
  private final RepResult second = rep(2, 4, SECOND_DEG);
  private final SetScene scene =
      new SetScene(
          new ClipReport.Measured(
              StandingSet.measured().clip(), set(List.of(first, second)), List.of()));

  /**
   * Lowering from the first second of the rep to the second, drive from the third to the fourth.
   */
  private static RepResult rep(int number, double fromS, double bottomDeg) {
    Reading missing = Reading.missing(Gap.NOT_READ);
    Map<Measure, Reading> bottom = new EnumMap<>(Measure.class);
    for (Measure measure : Measure.values()) {
      bottom.put(measure, missing);
    }
    bottom.put(Measure.TRUNK_LEAN, Reading.of(bottomDeg, 1));
    return new RepResult(
        number,
        new RepTimes(fromS + 1, fromS + 2, fromS + 2.5, fromS + 3, fromS + 4),
        new TempoReading(missing, missing, missing, missing),
        bottom,
        new DriveReading(missing, missing),
        false,
        new RepJudgement(number, List.of()),
        List.of());
  }

  private static SetResult set(List<RepResult> reps) {
    SetResult model = StandingSet.measured().set();
    double[] times = IntStream.range(0, 91).mapToDouble(i -> i / 10.0).toArray();
    SeriesTable series =
        new SeriesTable(
            IntStream.range(0, 91).toArray(),
            times,
            Map.of(Column.TRUNK_LEAN, DoubleStream.of(times).toArray()),
            Map.of());
    return Sets.set(
        model.setUp(),
        model.target(),
        reps,
        Map.of(),
        Optional.empty(),
        new SetSummary(2, Optional.empty()),
        series);
  }

  private TrunkChange change(RepResult rep, FlagKind kind, Baseline from, double value) {
    return TrunkChange.of(
            scene, rep, new Flag(kind, 7, 70, value, 3.5, MeasureUnit.DEGREES, from, 0.9))
        .orElseThrow();
  }

  @Test
  void hipsFirstIsFromTheBottomOfTheTableToTheFlaggedFrame() {
    assertThat(change(second, FlagKind.HIPS_FIRST, Baseline.BOTTOM_OF_REP, 16))
        .isEqualTo(new TrunkChange("at the bottom", SECOND_DEG, 7.0, SECOND_DEG + 16));
    // The look that shows 7.1 degrees best is outside the hold, which ends at 7 s.
    assertThat(change(first, FlagKind.HIPS_FIRST, Baseline.BOTTOM_OF_REP, 16).wasS())
        .isEqualTo(FIRST_DEG);
  }

  @Test
  void leanThatGrewIsSinceTheFirstRep() {
    assertThat(change(second, FlagKind.LEAN_GROWS, Baseline.FIRST_REP, SECOND_DEG - FIRST_DEG))
        .isEqualTo(new TrunkChange("in rep 1", FIRST_DEG, 2.4, SECOND_DEG));
  }

  @Test
  void leanThatGrewWithinTheRepIsSinceItsTop() {
    TrunkChange change = change(second, FlagKind.LEAN_GROWS, Baseline.TOP_OF_REP, SECOND_DEG - 4.8);
    assertThat(change.was()).isEqualTo("at the top");
    assertThat(change.wasS()).isEqualTo(4.8);
    assertThat(change.words()).isEqualTo("trunk 5° at the top, now 7°");
    assertThat(change(first, FlagKind.LEAN_GROWS, Baseline.TOP_OF_REP, 1.5).was())
        .isEqualTo("at the top");
  }

  @Test
  void theNumbersDifferByTheFlagsOwn() {
    TrunkChange change = change(second, FlagKind.HIPS_FIRST, Baseline.BOTTOM_OF_REP, 16);
    assertThat(change.words()).isEqualTo("trunk 7° at the bottom, now 23°");
    assertThat(change.nowDeg() - change.wasDeg()).isEqualTo(16);
  }

  @Test
  void otherFaultsTellNoChangeOfTheTrunk() {
    assertThat(
            TrunkChange.of(
                scene, second, new Flag(FlagKind.WOBBLE, 7, 70, 2, 1, MeasureUnit.CENTIMETRES, 1)))
        .isEmpty();
  }
}
