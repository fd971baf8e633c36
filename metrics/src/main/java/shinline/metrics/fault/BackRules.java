package shinline.metrics.fault;

import java.util.Optional;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.fault.FaultRule.Breach;

/** The back's outline at the bottom against that in standing. */
final class BackRules {
  private BackRules() {}

  static Optional<Breach> rounds(RepEvidence rep, SetEvidence set) {
    double limit = set.limit(CalibrationKey.BACK_ROUNDS_LIMIT);
    return rep.back()
        .filter(change -> change.more() > limit)
        .map(change -> Breach.ofShares(change.atS(), change.more(), limit));
  }

  static Optional<Breach> arches(RepEvidence rep, SetEvidence set) {
    double limit = set.limit(CalibrationKey.BACK_ARCHES_LIMIT);
    return rep.back()
        .filter(change -> -change.more() > limit)
        .map(change -> Breach.ofShares(change.atS(), -change.more(), limit));
  }
}
