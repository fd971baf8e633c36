package shinline.cli.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.words.Words;

/**
 * The lines of the record.
 *
 * @param lines those that can be read, each id once, in order
 * @param problems with lines that cannot, in order
 */
public record RecordLines(List<RecordLine> lines, List<LineProblem> problems) {
  /** Versions of the format this program reads. */
  private static final List<String> READ = List.of(Entry.SCHEMA);

  public RecordLines {
    lines = List.copyOf(lines);
    problems = List.copyOf(problems);
  }

  static RecordLines parse(String text) {
    List<RecordLine> lines = new ArrayList<>();
    List<LineProblem> problems = new ArrayList<>();
    Map<String, Integer> ids = new HashMap<>();
    String[] rows = text.split("\n", -1);
    for (int i = 0; i < rows.length; i++) {
      String row = i == 0 && rows[0].startsWith("\uFEFF") ? rows[0].substring(1) : rows[i];
      if (row.isBlank()) {
        continue;
      }
      int number = i + 1;
      boolean last = i == rows.length - 1;
      Optional<RecordLine> line = Json.parse(row).map(json -> new RecordLine(number, json));
      if (line.isEmpty()) {
        // The line break is written last: a last line without one was cut off while being written.
        problems.add(
            new LineProblem(number, Words.say(last ? "record.torn" : "record.unreadable")));
      } else {
        accept(line.get(), ids, problems).ifPresent(lines::add);
      }
    }
    return new RecordLines(lines, problems);
  }

  private static Optional<RecordLine> accept(
      RecordLine line, Map<String, Integer> ids, List<LineProblem> problems) {
    Optional<String> schema = Json.text(line.json(), "schema");
    if (schema.filter(s -> !READ.contains(s)).isPresent()) {
      problems.add(
          new LineProblem(line.number(), Words.say("record.newer", schema.get(), Entry.SCHEMA)));
      return Optional.empty();
    }
    if (Json.text(line.json(), "id").isEmpty()) {
      problems.add(new LineProblem(line.number(), Words.say("record.no-id", line.id())));
    }
    Integer first = ids.putIfAbsent(line.id(), line.number());
    if (first != null) {
      problems.add(new LineProblem(line.number(), Words.say("record.id-twice", line.id(), first)));
      return Optional.empty();
    }
    return Optional.of(line);
  }

  public Optional<RecordLine> withId(String id) {
    return lines.stream().filter(l -> l.id().equals(id)).findFirst();
  }
}
