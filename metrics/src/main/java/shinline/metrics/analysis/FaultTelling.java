package shinline.metrics.analysis;

import java.util.Optional;
import shinline.metrics.fault.Fault;
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

  private static Flag flag(Fault fault, int frame, double factor, MeasureUnit unit) {
    return new Flag(
        fault.kind(),
        fault.atS(),
        frame,
        fault.value() * factor,
        fault.limit() * factor,
        unit,
        fault.confidence());
  }
}
