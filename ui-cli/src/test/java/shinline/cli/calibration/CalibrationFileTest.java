package shinline.cli.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
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

  /** A number that nothing reads would look as if it could be set. */
  @Test
  void everyNumberIsReadSomewhere() throws IOException {
    StringBuilder code = new StringBuilder();
    for (Path main : List.of(Path.of("..", "metrics", "src", "main"), Path.of("src", "main"))) {
      try (Stream<Path> files = Files.walk(main)) {
        for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
          code.append(Files.readString(file));
        }
      }
    }
    assertThat(CalibrationKey.values())
        .filteredOn(
            key -> !Pattern.compile("CalibrationKey\\." + key.name() + "\\b").matcher(code).find())
        .isEmpty();
  }

  private static String shipped(PoseModel model) throws IOException {
    try (InputStream in =
        Calibration.class.getResourceAsStream(
            "/shinline/metrics/calibration/" + model.word() + ".json")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
