package shinline.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The sets of the record as a table, a row each, corrections applied. Columns are the fields of a
 * line; what a line has not stays empty.
 */
public final class RecordCsv {
  private static final List<String> FIXED =
      List.of(
          "id",
          "athlete",
          "date",
          "leg",
          "step",
          "set",
          "purpose",
          "asked.sets",
          "asked.reps",
          "asked.target",
          "asked.tempo",
          "asked.depth",
          "load.value",
          "load.unit",
          "load.kind",
          "load.vest",
          "pain",
          "note",
          "source",
          "result.reps",
          "result.cleanReps",
          "result.hit",
          "result.near",
          "result.miss",
          "result.unclear",
          "result.loweringS",
          "result.holdS",
          "result.driveSpeedMps",
          "result.barSpeedMps");

  /** Sign before the decimals; where it is the comma, a semicolon parts the columns. */
  public enum DecimalSign {
    POINT(','),
    COMMA(';');

    private final char separator;

    DecimalSign(char separator) {
      this.separator = separator;
    }
  }

  private RecordCsv() {}

  public static void write(List<RecordLine> lines, DecimalSign sign, Writer out)
      throws IOException {
    List<Map<String, JsonNode>> rows =
        lines.stream()
            .filter(l -> l.kind().equals(Entry.SET))
            .map(
                l -> {
                  Map<String, JsonNode> row = new TreeMap<>();
                  flatten("", l.json(), row);
                  return row;
                })
            .toList();
    TreeSet<String> more = new TreeSet<>();
    rows.forEach(r -> more.addAll(r.keySet()));
    FIXED.forEach(more::remove);
    List.of("schema", "kind", "recordedAt").forEach(more::remove);
    List<String> columns = new ArrayList<>(FIXED);
    columns.addAll(more);
    CsvWriter csv =
        CsvWriter.builder()
            .lineDelimiter(LineDelimiter.CRLF)
            .fieldSeparator(sign.separator)
            .build(out);
    csv.writeRecord(columns);
    for (Map<String, JsonNode> row : rows) {
      csv.writeRecord(columns.stream().map(c -> text(row.get(c), sign)).toList());
    }
    csv.flush();
  }

  private static void flatten(String path, JsonNode node, Map<String, JsonNode> row) {
    node.fields()
        .forEachRemaining(
            f -> {
              String name = path + f.getKey();
              if (f.getValue().isObject()) {
                flatten(name + ".", f.getValue(), row);
              } else {
                row.put(name, f.getValue());
              }
            });
  }

  private static String text(@org.jspecify.annotations.Nullable JsonNode value, DecimalSign sign) {
    if (value == null || value.isNull()) {
      return "";
    } else if (value.isNumber()) {
      String plain = value.decimalValue().toPlainString();
      return sign == DecimalSign.COMMA ? plain.replace('.', ',') : plain;
    }
    String text = value.isTextual() ? value.textValue() : value.toString();
    // A spreadsheet takes a text that begins so for a formula.
    return text.isEmpty() || "=+-@\t\r".indexOf(text.charAt(0)) < 0 ? text : "'" + text;
  }
}
