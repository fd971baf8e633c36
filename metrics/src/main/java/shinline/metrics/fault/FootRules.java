package shinline.metrics.fault;

import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.fault.FaultRule.Breach;

/** The front foot on the floor, the rear one idle, the knee steady over them. */
final class FootRules {
  private FootRules() {}

  static Optional<Breach> heelRise(RepEvidence rep, SetEvidence set) {
    return Breach.above(rep.heelAtS(), rep.heelRise(), heelLimit(set));
  }

  static Optional<Breach> forefootRise(RepEvidence rep, SetEvidence set) {
    return Breach.above(
        rep.forefootAtS(), rep.forefootRise(), set.limit(CalibrationKey.FOREFOOT_RISE_LIMIT));
  }

  /** Seen from well above or below, a heel on the floor shows a rise as the knee moves. */
  private static double heelLimit(SetEvidence set) {
    double steep = Math.abs(set.pitchDeg()) - set.limit(CalibrationKey.HEEL_RISE_STEEP);
    return set.limit(CalibrationKey.HEEL_RISE_LIMIT)
        + set.limit(CalibrationKey.HEEL_RISE_PITCH) * Math.max(0, steep);
  }

  /**
   * The rear knee opens more, over the front one, than is usual in this set. Out of a shallow
   * bottom the front knee has less to open, so that such a rep is not like the others.
   */
  static Optional<Breach> rearPush(RepEvidence rep, SetEvidence set) {
    OptionalDouble usual = set.median(RepEvidence::rearOpenDeg);
    boolean shallow = RangeAndTempoRules.shallow(rep, set).isPresent();
    if (shallow || rep.rearOpenDeg().isEmpty() || usual.isEmpty()) {
      return Optional.empty();
    }
    double more = rep.rearOpenDeg().getAsDouble() - usual.getAsDouble();
    return Breach.above(
        rep.bottomEndS(), OptionalDouble.of(more), set.limit(CalibrationKey.REAR_PUSH_LIMIT));
  }

  static Optional<Breach> wobble(RepEvidence rep, SetEvidence set) {
    return Breach.above(rep.bottomS(), rep.wobble(), set.limit(CalibrationKey.WOBBLE_LIMIT));
  }
}
