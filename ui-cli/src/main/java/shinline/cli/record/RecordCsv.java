package shinline.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import shinline.cli.csv.CsvTable;
import shinline.cli.csv.DecimalSign;

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
    CsvTable.write(
        Stream.concat(
            Stream.of(columns),
            rows.stream().map(row -> columns.stream().map(c -> text(row.get(c), sign)).toList())),
        sign,
        out);
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
      return sign.cell(value.decimalValue().toPlainString());
    }
    return CsvTable.defused(value.isTextual() ? value.textValue() : value.toString());
  }
}
