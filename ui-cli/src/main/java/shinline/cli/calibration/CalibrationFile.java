package shinline.cli.calibration;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationSheet;
import shinline.vision.pose.PoseModel;

/**
 * A calibration as a JSON file with one line for each value and each source, so that a comparison
 * of two files tells what changed.
 */
public final class CalibrationFile {
  private static final JsonMapper MAPPER =
      JsonMapper.builder().enable(JsonGenerator.Feature.WRITE_BIGDECIMAL_AS_PLAIN).build();

  private static final ObjectWriter LINE =
      MAPPER.writer(
          new DefaultPrettyPrinter()
              .withObjectIndenter(DefaultPrettyPrinter.FixedSpaceIndenter.instance)
              .withSeparators(
                  Separators.createDefaultInstance()
                      .withObjectFieldValueSpacing(Separators.Spacing.AFTER)));

  private static final Map<PoseModel, Calibration> SHIPPED = new EnumMap<>(PoseModel.class);

  private CalibrationFile() {}

  /** The calibration of a pose model that the program is shipped with. */
  public static Calibration shipped(PoseModel model) {
    synchronized (SHIPPED) {
      return SHIPPED.computeIfAbsent(model, CalibrationFile::read);
    }
  }

  private static Calibration read(PoseModel model) {
    String name = "/shinline/metrics/calibration/" + model.word() + ".json";
    try (InputStream in = Calibration.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program was built without " + name);
      }
      return MAPPER.readValue(in, CalibrationSheet.class).calibration();
    } catch (IOException e) {
      throw new UncheckedIOException(name + " cannot be read", e);
    }
  }

  /** The same calibration gives the same text. */
  public static void write(Calibration calibration, Writer out) throws IOException {
    CalibrationSheet sheet = CalibrationSheet.of(calibration);
    out.write("{\n");
    out.write("  \"schema\": " + LINE.writeValueAsString(sheet.schema()) + ",\n");
    out.write("  \"model\": " + LINE.writeValueAsString(sheet.model()) + ",\n");
    out.write("  \"sources\": [\n");
    lines(sheet.sources(), out);
    out.write("  ],\n");
    out.write("  \"values\": [\n");
    lines(sheet.values(), out);
    out.write("  ]\n}\n");
  }

  private static void lines(List<?> parts, Writer out) throws IOException {
    for (Iterator<?> left = parts.iterator(); left.hasNext(); ) {
      out.write("    " + LINE.writeValueAsString(left.next()) + (left.hasNext() ? ",\n" : "\n"));
    }
  }
}
