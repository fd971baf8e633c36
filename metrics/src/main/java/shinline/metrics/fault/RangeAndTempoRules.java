package shinline.metrics.fault;

import java.util.Optional;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.fault.FaultRule.Breach;
import shinline.metrics.target.TempoTarget.Phase;

/** How deep, how long and how fast, against the set itself and the tempo asked for. */
final class RangeAndTempoRules {
  /** From here on a rep is of full range, share of stature; a shorter way takes less time. */
  private static final double FULL_TRAVEL = 0.2;

  private RangeAndTempoRules() {}

  static Optional<Breach> shallow(RepEvidence rep, SetEvidence set) {
    double limit = set.limit(CalibrationKey.SHALLOW_LIMIT);
    double depth = rep.travel() / set.deepestAtFirst();
    return depth < limit
        ? Optional.of(Breach.ofShares(rep.bottomS(), depth, limit))
        : Optional.empty();
  }

  static Optional<Breach> loweringRushed(RepEvidence rep, SetEvidence set) {
    double asked =
        shortest(
            set,
            set.tempo().lowering(),
            set.usualMost(RepEvidence::loweringS)
                * set.limit(CalibrationKey.LOWERING_RUSHED_LIMIT));
    double always =
        set.limit(CalibrationKey.LOWERING_RUSHED_ALWAYS) * Math.min(1, rep.travel() / FULL_TRAVEL);
    return below((rep.startS() + rep.bottomStartS()) / 2, rep.loweringS(), Math.max(asked, always));
  }

  /** Where no hold is asked for, only a set with a real hold can have one too short. */
  static Optional<Breach> holdSkipped(RepEvidence rep, SetEvidence set) {
    double longest = set.most(RepEvidence::holdS);
    double real = longest >= set.limit(CalibrationKey.HOLD_SKIPPED_REAL_HOLD) ? longest : 0;
    return below(
        rep.bottomS(),
        rep.holdS(),
        shortest(set, set.tempo().hold(), real * set.limit(CalibrationKey.HOLD_SKIPPED_LIMIT)));
  }

  /** A shallow rep is slower over a shorter way: only a drive that also takes longer is slow. */
  static Optional<Breach> driveSlow(RepEvidence rep, SetEvidence set) {
    double limit = set.limit(CalibrationKey.DRIVE_SLOW_LIMIT);
    double best = set.most(r -> r.driveSpeed().orElse(0));
    if (rep.driveSpeed().isEmpty() || best <= 0) {
      return Optional.empty();
    }
    double speed = rep.driveSpeed().getAsDouble() / best;
    return speed < limit && rep.driveS() > set.quickestDriveS() / limit
        ? Optional.of(Breach.ofShares((rep.bottomEndS() + rep.endS()) / 2, speed, limit))
        : Optional.empty();
  }

  /** The shortest time that is not too short: as asked for, else as the set itself has it. */
  private static double shortest(SetEvidence set, Optional<Phase> asked, double ofSet) {
    return asked.map(phase -> Math.max(0, phase.minS() - set.tempoMarginS())).orElse(ofSet);
  }

  private static Optional<Breach> below(double atS, double value, double limit) {
    return value < limit ? Optional.of(new Breach(atS, value, limit)) : Optional.empty();
  }
}
