package shinline.metrics.result;

import shinline.metrics.fault.Baseline;
import shinline.metrics.fault.FlagKind;

/**
 * A fault at one instant of a rep.
 *
 * @param atS seconds from the first frame
 * @param frame index of the frame that shows it
 * @param value the value found, in {@code unit}
 * @param limit the limit it broke, in {@code unit}
 * @param baseline what the value is counted from
 * @param confidence 0.5 at the limit, 1 from half as much again; of a shin off its target it grows
 *     with how far it is beyond the margin, against twice its ±
 */
public record Flag(
    FlagKind kind,
    double atS,
    int frame,
    double value,
    double limit,
    MeasureUnit unit,
    Baseline baseline,
    double confidence) {

  /** Counted from no posture. */
  public Flag(
      FlagKind kind,
      double atS,
      int frame,
      double value,
      double limit,
      MeasureUnit unit,
      double confidence) {
    this(kind, atS, frame, value, limit, unit, Baseline.OTHER, confidence);
  }
}
