package shinline.metrics.analysis;

import java.util.Optional;
import shinline.metrics.fault.Fault;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Flag;
import shinline.metrics.result.MeasureUnit;

/**
 * Faults in units that a coach reads.
 *
 * @param cmPerPx centimetres a pixel; empty without a scale
 * @param staturePx the athlete's standing height, pixels
 */
record FaultTelling(Optional<Double> cmPerPx, double staturePx) {

  /**
   * @param frame that shows it
   */
  Flag flag(Fault fault, int frame) {
    return switch (fault.kind().unit()) {
      case DEGREES -> flag(fault, frame, 1, MeasureUnit.DEGREES);
      case SECONDS -> flag(fault, frame, 1, MeasureUnit.SECONDS);
      case PERCENT -> flag(fault, frame, 1, MeasureUnit.PERCENT);
      // Without a scale a length is told as a share of the athlete's own height.
      case STATURES ->
          cmPerPx
              .map(cm -> flag(fault, frame, cm * staturePx, MeasureUnit.CENTIMETRES))
              .orElseGet(() -> flag(fault, frame, 100, MeasureUnit.PERCENT));
      case AS_ASKED ->
          throw new IllegalArgumentException(fault.kind() + " is told by the judge of the target");
    };
  }

  /**
   * The flag of a shin that the judge found off its target: sure at once, and surer farther off.
   */
  static Flag flag(Finding.Outside shin, double atS, int frame) {
    return new Flag(
        FlagKind.SHIN_OFF_TARGET,
        atS,
        frame,
        shin.value(),
        shin.bound(),
        shin.limit().unit(),
        Math.min(1, 0.5 + (shin.by() - shin.limit().margin()) / (2 * shin.plusMinus() + 1e-9)));
  }

  private static Flag flag(Fault fault, int frame, double factor, MeasureUnit unit) {
    return new Flag(
        fault.kind(),
        fault.atS(),
        frame,
        fault.value() * factor,
        fault.limit() * factor,
        unit,
        fault.baseline(),
        fault.confidence());
  }
}
