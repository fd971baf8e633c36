package shinline.metrics.result;

import shinline.metrics.fault.FlagKind;

/**
 * A fault at one instant of a rep.
 *
 * @param atS seconds from the first frame
 * @param frame index of the frame that shows it
 * @param value the value found, in {@code unit}
 * @param limit the limit it broke, in {@code unit}
 * @param confidence 0…1; how far the value is beyond the limit against its ±
 */
public record Flag(
    FlagKind kind,
    double atS,
    int frame,
    double value,
    double limit,
    MeasureUnit unit,
    double confidence) {}
