package shinline.metrics.fault;

import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.fault.FaultRule.Breach;

/** Borrowing from the lower back, as far as the line of the trunk tells it. */
final class TrunkRules {
  private TrunkRules() {}

  /**
   * Leans more at the bottom than in the first rep; else, much more than before this rep. Where a
   * disc hides the shoulders the bar's end tells of large changes.
   */
  static Optional<Breach> leanGrows(RepEvidence rep, SetEvidence set) {
    if (rep.leanBottomDeg().isEmpty() || set.first().leanBottomDeg().isEmpty()) {
      return Breach.above(
              rep.bottomS(),
              difference(rep.barLean().bottomDeg(), set.first().barLean().bottomDeg()),
              set.limit(CalibrationKey.BAR_LEAN_GROWS_LIMIT))
          .map(breach -> breach.since(Baseline.FIRST_REP));
    }
    return Breach.above(
            rep.bottomS(),
            difference(rep.leanBottomDeg(), set.first().leanBottomDeg()),
            set.limit(CalibrationKey.LEAN_GROWS_LIMIT))
        .map(breach -> breach.since(Baseline.FIRST_REP))
        .or(
            () ->
                Breach.above(
                        rep.bottomS(),
                        difference(rep.leanBottomDeg(), rep.leanTopDeg()),
                        set.limit(CalibrationKey.LEAN_GROWS_IN_ONE_REP))
                    .map(breach -> breach.since(Baseline.TOP_OF_REP)));
  }

  /** The trunk tips on out of the bottom: the hips rise before the chest. */
  static Optional<Breach> hipsFirst(RepEvidence rep, SetEvidence set) {
    if (rep.leanGainDriveDeg().isEmpty()) {
      return Breach.above(
              rep.barLean().gainAtS(),
              rep.barLean().gainDriveDeg(),
              set.limit(CalibrationKey.BAR_HIPS_FIRST_LIMIT))
          .map(breach -> breach.since(Baseline.BOTTOM_OF_REP));
    }
    return Breach.above(
            rep.leanGainAtS(), rep.leanGainDriveDeg(), set.limit(CalibrationKey.HIPS_FIRST_LIMIT))
        .map(breach -> breach.since(Baseline.BOTTOM_OF_REP));
  }

  /**
   * Hips go back while the knee stays: shin more upright and trunk no longer about parallel to it.
   */
  static Optional<Breach> hingeShift(RepEvidence rep, SetEvidence set) {
    RepEvidence first = set.first();
    OptionalDouble opened =
        difference(
            difference(rep.leanBottomDeg(), rep.shinDeg()),
            difference(first.leanBottomDeg(), first.shinDeg()));
    OptionalDouble back = difference(first.hipAhead(), rep.hipAhead());
    return back.isPresent() && back.getAsDouble() > set.limit(CalibrationKey.HINGE_SHIFT_HIP_BACK)
        ? Breach.above(rep.bottomS(), opened, set.limit(CalibrationKey.HINGE_SHIFT_LIMIT))
            .map(breach -> breach.since(Baseline.FIRST_REP))
        : Optional.empty();
  }

  private static OptionalDouble difference(OptionalDouble a, OptionalDouble b) {
    return a.isPresent() && b.isPresent()
        ? OptionalDouble.of(a.getAsDouble() - b.getAsDouble())
        : OptionalDouble.empty();
  }
}
