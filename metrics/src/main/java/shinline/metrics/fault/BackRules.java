package shinline.metrics.fault;

import java.util.Optional;
import shinline.metrics.fault.FaultRule.Breach;

/** The back's outline at the bottom against that in standing. */
final class BackRules {
  private BackRules() {}

  static Optional<Breach> rounds(RepEvidence rep, SetEvidence set) {
    double limit = set.limits().roundShare();
    return rep.back()
        .filter(change -> change.more() > limit)
        .map(change -> Breach.ofShares(change.atS(), change.more(), limit));
  }

  static Optional<Breach> arches(RepEvidence rep, SetEvidence set) {
    double limit = set.limits().archShare();
    return rep.back()
        .filter(change -> -change.more() > limit)
        .map(change -> Breach.ofShares(change.atS(), -change.more(), limit));
  }
}
