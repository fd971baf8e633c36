package shinline.metrics.fault;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.synthetic.ShippedCalibration;
import shinline.metrics.target.TempoTarget;

/**
 * What the trunk's rules tell beside the kind: the instant, the amount, what it is counted from.
 */
class TrunkRulesTest {
  private static final Calibration LIMITS = ShippedCalibration.HEAVY;
  private static final double EXACT = 1e-9;

  private static EvidenceMaker rep() {
    return new EvidenceMaker();
  }

  private static EvidenceMaker byBar(double bottomDeg, double gainDeg) {
    return rep().byBar(bottomDeg, gainDeg);
  }

  private static List<Fault> lastOf(EvidenceMaker... reps) {
    List<RepEvidence> all = List.of(reps).stream().map(EvidenceMaker::make).toList();
    List<List<Fault>> found = new FaultFinder(LIMITS, TempoTarget.any(), 0.3, 0).find(all);
    return found.get(found.size() - 1);
  }

  private static Fault only(List<Fault> faults) {
    assertThat(faults).hasSize(1);
    return faults.get(0);
  }

  @Test
  void leaningMoreIsToldAgainstTheFirstRepAtTheBottom() {
    Fault fault = only(lastOf(rep().leanBottom(14), rep().leanBottom(30), rep().leanBottom(21)));
    assertThat(fault.kind()).isEqualTo(FlagKind.LEAN_GROWS);
    // Not against the rep before, which leaned more still.
    assertThat(fault.value()).isCloseTo(7, within(EXACT));
    assertThat(fault.limit()).isEqualTo(LIMITS.value(CalibrationKey.LEAN_GROWS_LIMIT));
    assertThat(fault.atS()).isEqualTo(EvidenceMaker.BOTTOM_S);
    assertThat(fault.baseline()).isEqualTo(Baseline.FIRST_REP);
  }

  @Test
  void leaningLessThanTheFirstRepIsNoFault() {
    assertThat(lastOf(rep().leanBottom(25), rep().leanBottom(5))).isEmpty();
  }

  @Test
  void aFirstRepThatTipsOverIsToldAgainstItsOwnTop() {
    Fault fault = only(lastOf(rep().leanTop(4).leanBottom(44)));
    assertThat(fault.kind()).isEqualTo(FlagKind.LEAN_GROWS);
    assertThat(fault.value()).isCloseTo(40, within(EXACT));
    assertThat(fault.limit()).isEqualTo(LIMITS.value(CalibrationKey.LEAN_GROWS_IN_ONE_REP));
    assertThat(fault.baseline()).isEqualTo(Baseline.TOP_OF_REP);
  }

  @Test
  void growingAgainstTheFirstRepIsToldBeforeGrowingWithinTheRep() {
    Fault fault = only(lastOf(rep(), rep().leanTop(0).leanBottom(45)));
    assertThat(fault.baseline()).isEqualTo(Baseline.FIRST_REP);
    assertThat(fault.value()).isCloseTo(45 - EvidenceMaker.CLEAN_BOTTOM_LEAN_DEG, within(EXACT));
  }

  @Test
  void hipsFirstShowsWhereTheTrunkLeansMostAndAgainstTheBottom() {
    Fault fault = only(lastOf(rep(), rep().leanGain(9)));
    assertThat(fault.kind()).isEqualTo(FlagKind.HIPS_FIRST);
    assertThat(fault.atS()).isEqualTo(EvidenceMaker.GAIN_AT_S);
    assertThat(fault.baseline()).isEqualTo(Baseline.BOTTOM_OF_REP);
    assertThat(fault.value()).isCloseTo(9, within(EXACT));
  }

  @Test
  void hipsThatGoBackAloneAreNoHingeAndNeitherIsATrunkThatOpensAlone() {
    assertThat(lastOf(rep(), rep().hipBack(0.1))).isEmpty();
    assertThat(lastOf(rep(), rep().shinLess(20))).isEmpty();
    // Forward by as much is no hinge either.
    assertThat(lastOf(rep(), rep().shinLess(20).hipBack(-0.1))).isEmpty();
    Fault fault = only(lastOf(rep(), rep().shinLess(15).hipBack(0.03)));
    assertThat(fault.kind()).isEqualTo(FlagKind.HINGE_SHIFT);
    assertThat(fault.value()).isCloseTo(15, within(EXACT));
    assertThat(fault.baseline()).isEqualTo(Baseline.FIRST_REP);
  }

  /** Between the limit by shoulders and that by the bar's end nothing is told by the bar. */
  @Test
  void theBarsEndTellsLargeChangesOnly() {
    double shoulders = LIMITS.value(CalibrationKey.LEAN_GROWS_LIMIT);
    double bar = LIMITS.value(CalibrationKey.BAR_LEAN_GROWS_LIMIT);
    assertThat(bar).isGreaterThan(shoulders);
    double between = (shoulders + bar) / 2;
    assertThat(lastOf(byBar(8, 0), byBar(8 + between, 0))).isEmpty();
    Fault fault = only(lastOf(byBar(8, 0), byBar(8 + bar + 1, 0)));
    assertThat(fault.kind()).isEqualTo(FlagKind.LEAN_GROWS);
    assertThat(fault.value()).isCloseTo(bar + 1, within(EXACT));
    assertThat(fault.limit()).isEqualTo(bar);
    assertThat(fault.baseline()).isEqualTo(Baseline.FIRST_REP);
  }

  @Test
  void hipsFirstByTheBarHasTheBarsOwnInstantAndLimit() {
    double limit = LIMITS.value(CalibrationKey.BAR_HIPS_FIRST_LIMIT);
    assertThat(lastOf(byBar(8, 0), byBar(8, limit - 0.1))).isEmpty();
    Fault fault = only(lastOf(byBar(8, 0), byBar(8, limit + 0.1)));
    assertThat(fault.kind()).isEqualTo(FlagKind.HIPS_FIRST);
    assertThat(fault.atS()).isEqualTo(EvidenceMaker.BAR_GAIN_AT_S);
    assertThat(fault.limit()).isEqualTo(limit);
    assertThat(fault.baseline()).isEqualTo(Baseline.BOTTOM_OF_REP);
  }

  /** Shoulders that were seen in one rep only are not held against a bar's end in another. */
  @Test
  void shouldersAndBarAreNotMixed() {
    assertThat(lastOf(rep().leanBottom(5), byBar(40, 0))).isEmpty();
    assertThat(lastOf(byBar(5, 0), rep().leanBottom(30))).isEmpty();
  }

  @Test
  void whatWasNotSeenIsNoFault() {
    EvidenceMaker unseen = rep().withoutTrunk();
    assertThat(lastOf(rep(), unseen)).isEmpty();
    assertThat(Sight.missing(List.of(rep().make(), unseen.make())).get(Sight.TRUNK))
        .isEqualTo(List.of(2));
    assertThat(Optional.ofNullable(Sight.missing(List.of(rep().make())).get(Sight.TRUNK)))
        .isEmpty();
  }
}
