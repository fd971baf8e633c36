package shinline.metrics.calibration;

/**
 * One calibrated number.
 *
 * @param value in the unit of its key
 * @param what what it means, in words
 */
public record CalibratedValue(double value, Provenance provenance, String what) {
  public CalibratedValue {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a calibrated value is " + value);
    }
  }

  /** Another value of the same meaning. */
  public CalibratedValue refitted(double fitted, Provenance from) {
    return new CalibratedValue(fitted, from, what);
  }
}
