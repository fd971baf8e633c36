package shinline.cli.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.cli.calibration.CalibrationFile;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.fault.FaultUnit;
import shinline.metrics.fault.FlagKind;
import shinline.vision.pose.PoseModel;

/**
 * What follows from the catalogue of faults: words of each kind, the schema's list, the table in
 * docs/measures.md. With {@code -Dshinline.docs=true} schema and table are written anew.
 */
class FaultCatalogueTest {
  private static final Path SCHEMA = Path.of("..", "docs", "result-format.schema.json");
  private static final Path MEASURES = Path.of("..", "docs", "measures.md");

  /** In the schema, the kinds of a flag: what stands in the brackets is group 1. */
  private static final Pattern KINDS =
      Pattern.compile("\"flag\": \\{.*?\"kind\": \\{ \"enum\": \\[(.*?)]", Pattern.DOTALL);

  private static final Pattern TABLE =
      Pattern.compile(
          "<!-- begin: faults, made from the catalogue -->\n(.*?)<!-- end: faults -->",
          Pattern.DOTALL);

  /** The athlete whose limits are told in centimetres, too. */
  private static final double EXAMPLE_CM = 178;

  private final Calibration shipped = CalibrationFile.shipped(PoseModel.HEAVY);

  @ParameterizedTest
  @EnumSource
  void hasWordsAndACue(FlagKind kind) {
    for (String aspect :
        List.of("name", "caption", "caption-limit", "counts", "cue", "cue-sentence")) {
      assertThat(Words.of(kind, aspect, "4 cm", "2 cm", "at most 2 cm")).as(aspect).isNotBlank();
    }
    assertThat(row(kind)).doesNotContain("{");
  }

  @Test
  void theSchemaListsEveryKind() throws IOException {
    String kinds =
        Stream.of(FlagKind.values())
            .map(kind -> '"' + kind.jsonName() + '"')
            .collect(Collectors.joining(", "));
    assertThat(committed(SCHEMA, KINDS, kinds)).isEqualTo(kinds);
  }

  @Test
  void thePageOfMeasuresHasEveryKind() throws IOException {
    String table =
        Stream.concat(
                Stream.of(
                    "| flag | when | unit | clean rep | blind spots |", "|---|---|---|---|---|"),
                Stream.of(FlagKind.values()).map(this::row))
            .collect(Collectors.joining("\n", "\n", "\n\n"));
    assertThat(committed(MEASURES, TABLE, table)).isEqualTo(table);
  }

  private String row(FlagKind kind) {
    return String.format(
        "| `%s` | %s | %s | %s | %s |",
        kind.jsonName(),
        Words.of(kind, "when", limits(kind).toArray()),
        Words.of(kind.unit(), "name"),
        kind.spoils() ? "no" : "yes",
        Words.of(kind, "blind-spots"));
  }

  private List<String> limits(FlagKind kind) {
    List<String> limits = new ArrayList<>();
    for (CalibrationKey key : CalibrationKey.values()) {
      if (key.word().startsWith(kind.jsonName() + ".")) {
        limits.add(amount(key) + "<!-- " + key.word() + " -->");
      }
    }
    if (kind.unit() == FaultUnit.STATURES) {
      double share = shipped.value(kind.limitKey().orElseThrow());
      limits.add(String.format(Locale.ROOT, "%.1f cm", EXAMPLE_CM * share));
    }
    return limits;
  }

  private String amount(CalibrationKey key) {
    BigDecimal value = new BigDecimal(shipped.value(key), new MathContext(6));
    return switch (key.unit()) {
      case SHARE -> plain(value.scaleByPowerOfTen(2)) + " %";
      case DEGREES -> plain(value) + "°";
      default -> plain(value) + " " + key.unit().symbol();
    };
  }

  private static String plain(BigDecimal value) {
    return value.stripTrailingZeros().toPlainString();
  }

  /** What a file has now, after it was written anew if that is asked for. */
  private static String committed(Path file, Pattern place, String made) throws IOException {
    String text = Files.readString(file);
    Matcher found = place.matcher(text);
    assertThat(found.find()).as("the place in " + file).isTrue();
    if (Boolean.getBoolean("shinline.docs")) {
      Files.writeString(
          file, text.substring(0, found.start(1)) + made + text.substring(found.end(1)));
      return made;
    }
    return found.group(1);
  }
}
