package shinline.metrics.calibration;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;

/**
 * All calibrated numbers of one pose model.
 *
 * @param model the pose model's name
 * @param values one for every key, each within its key's range
 */
public record Calibration(String model, Map<CalibrationKey, CalibratedValue> values) {

  /**
   * @throws IllegalArgumentException naming the key, when a value is missing or out of range
   */
  public Calibration {
    values = Collections.unmodifiableMap(new EnumMap<>(values));
    for (CalibrationKey key : CalibrationKey.values()) {
      CalibratedValue found = values.get(key);
      if (found == null) {
        throw new IllegalArgumentException(key.word() + " is missing");
      }
      if (!(found.value() >= key.least() && found.value() <= key.most())) {
        throw new IllegalArgumentException(
            key.word()
                + " is "
                + found.value()
                + " "
                + key.unit().symbol()
                + ", and must be from "
                + key.least()
                + " to "
                + key.most());
      }
    }
  }

  /** A value in its key's unit. */
  public double value(CalibrationKey key) {
    return told(key).value();
  }

  /** A value with its meaning and where it comes from. */
  public CalibratedValue told(CalibrationKey key) {
    return Objects.requireNonNull(values.get(key));
  }

  /** The same with another value for some keys. */
  public Calibration with(Map<CalibrationKey, CalibratedValue> others) {
    Map<CalibrationKey, CalibratedValue> all = new EnumMap<>(values);
    all.putAll(others);
    return new Calibration(model, all);
  }

  /** The same with bare values, of the provenance they had, to try a fit. */
  public Calibration trying(Map<CalibrationKey, Double> others) {
    Map<CalibrationKey, CalibratedValue> all = new EnumMap<>(values);
    others.forEach((key, value) -> all.put(key, told(key).refitted(value, told(key).provenance())));
    return new Calibration(model, all);
  }
}
