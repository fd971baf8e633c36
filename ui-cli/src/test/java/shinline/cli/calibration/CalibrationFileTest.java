package shinline.cli.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.metrics.calibration.Calibration;
import shinline.vision.pose.PoseModel;

class CalibrationFileTest {

  /** So a file that calibrate writes differs from the shipped one in what was fitted, only. */
  @ParameterizedTest
  @EnumSource(PoseModel.class)
  void theShippedFileIsAsItWouldBeWritten(PoseModel model) throws IOException {
    StringWriter written = new StringWriter();
    CalibrationFile.write(CalibrationFile.shipped(model), written);
    assertThat(written).hasToString(shipped(model));
  }

  @ParameterizedTest
  @EnumSource(PoseModel.class)
  void eachModelHasItsOwn(PoseModel model) {
    assertThat(CalibrationFile.shipped(model).model()).isEqualTo(model.word());
  }

  private static String shipped(PoseModel model) throws IOException {
    try (InputStream in =
        Calibration.class.getResourceAsStream(
            "/shinline/metrics/calibration/" + model.word() + ".json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
