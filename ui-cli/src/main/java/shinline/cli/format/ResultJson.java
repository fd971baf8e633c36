package shinline.cli.format;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import shinline.cli.file.FlagImages;
import shinline.cli.json.JsonRecords;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.PhotoReport;

/**
 * Writes and reads {@code shinline-result/1}, the contract of docs/result-format.md. Keys come in a
 * fixed order and numbers with fixed rounding; there is no date and no path in it, so the same clip
 * gives the same bytes.
 */
public final class ResultJson {
  private static final RoundedNumber THREE_PLACES = new RoundedNumber(3);

  /** A key that only a newer version has is passed over. */
  private static final ObjectMapper MAPPER =
      JsonRecords.mapper()
          .addModule(
              new SimpleModule()
                  .addSerializer(Double.class, THREE_PLACES)
                  .addSerializer(double.class, THREE_PLACES))
          .disable(DeserializationFeature.FAIL_ON_UNKNOWN_PROPERTIES)
          .build();

  private static final ObjectWriter WRITER = MAPPER.writer(printer());

  private ResultJson() {}

  /** A result without pictures beside it. */
  public static void write(ClipReport.Measured report, Writer writer) throws IOException {
    write(report, FlagImages.none(), writer);
  }

  /**
   * @param images the pictures that lie beside the file
   */
  public static void write(ClipReport.Measured report, FlagImages images, Writer writer)
      throws IOException {
    write(ResultDocument.of(report, images), writer);
  }

  public static void write(ClipReport.NotMeasured report, Writer writer) throws IOException {
    write(ResultDocument.of(report), writer);
  }

  /**
   * @param image name of the drawn picture that lies beside the file
   */
  public static void write(PhotoReport.Measured report, Optional<String> image, Writer writer)
      throws IOException {
    WRITER.writeValue(writer, PhotoDocument.of(report, image));
  }

  public static void write(PhotoReport.NotMeasured report, Writer writer) throws IOException {
    WRITER.writeValue(writer, PhotoDocument.of(report));
  }

  static void write(ResultDocument result, Writer writer) throws IOException {
    WRITER.writeValue(writer, result);
  }

  /**
   * @throws com.fasterxml.jackson.core.JacksonException when the file holds something else
   */
  public static ResultDocument read(Path file) throws IOException {
    ResultDocument result = MAPPER.readValue(Files.readAllBytes(file), ResultDocument.class);
    if (result == null || !result.schema().startsWith("shinline-result/")) {
      throw MismatchedInputException.from(null, ResultDocument.class, ResultDocument.SCHEMA);
    }
    return result;
  }

  private static DefaultPrettyPrinter printer() {
    DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter("\n");
    printer.indentObjectsWith(indenter);
    printer.indentArraysWith(indenter);
    return printer;
  }
}
