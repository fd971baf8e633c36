package shinline.metrics.synthetic;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationSheet;

/** The calibrations that the program is shipped with, read for tests. */
public final class ShippedCalibration {
  public static final Calibration HEAVY = read("heavy");
  public static final Calibration FULL = read("full");

  private ShippedCalibration() {}

  private static Calibration read(String model) {
    try (InputStream in =
        Calibration.class.getResourceAsStream("/shinline/metrics/calibration/" + model + ".json")) {
      return new ObjectMapper().readValue(in, CalibrationSheet.class).calibration();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
