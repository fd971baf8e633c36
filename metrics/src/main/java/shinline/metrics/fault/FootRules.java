package shinline.metrics.fault;

import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.fault.FaultRule.Breach;

/** The front foot on the floor, the rear one idle, the knee steady over them. */
final class FootRules {
  /** To and fro counts from this many times the set's middle rep on. */
  private static final double WOBBLE_OVER_USUAL = 1.8;

  private FootRules() {}

  static Optional<Breach> heelRise(RepEvidence rep, SetEvidence set) {
    return Breach.above(rep.heelAtS(), rep.heelRise(), set.limits().heelRiseShare());
  }

  static Optional<Breach> forefootRise(RepEvidence rep, SetEvidence set) {
    return Breach.above(rep.forefootAtS(), rep.forefootRise(), set.limits().forefootRiseShare());
  }

  /** The rear knee opens more, over the front one, than is usual in this set. */
  static Optional<Breach> rearPush(RepEvidence rep, SetEvidence set) {
    OptionalDouble usual = set.median(RepEvidence::rearOpenDeg);
    if (rep.rearOpenDeg().isEmpty() || usual.isEmpty()) {
      return Optional.empty();
    }
    double more = rep.rearOpenDeg().getAsDouble() - usual.getAsDouble();
    return Breach.above(rep.bottomEndS(), OptionalDouble.of(more), set.limits().rearPushDeg());
  }

  static Optional<Breach> wobble(RepEvidence rep, SetEvidence set) {
    OptionalDouble usual = set.median(RepEvidence::wobble);
    if (usual.isEmpty()) {
      return Optional.empty();
    }
    double limit = Math.max(set.limits().wobbleShare(), WOBBLE_OVER_USUAL * usual.getAsDouble());
    return Breach.above(rep.bottomS(), rep.wobble(), limit);
  }
}
