package shinline.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import shinline.cli.words.Words;
import shinline.metrics.track.Side;
import shinline.metrics.training.Pain;
import shinline.metrics.training.SetEntry;

/** A line of the record in words. */
public final class LineText {
  private static final int SHORT_ID = 8;
  private static final Set<String> TOLD =
      Set.of("schema", "id", "recordedAt", "kind", "athlete", "date");

  private LineText() {}

  /** One row, for a list. */
  public static String of(RecordLine line) {
    String date = Json.text(line.json(), "date").orElse("          ");
    return Words.say("record.row", date, line.kind(), content(line), shortId(line.id()));
  }

  /** The first letters of an id, which commands take for the whole. */
  public static String shortId(String id) {
    return id.substring(0, Math.min(SHORT_ID, id.length()));
  }

  /** The whole line, a field a row. */
  public static List<String> fields(RecordLine line) {
    return StreamSupport.stream(
            ((Iterable<java.util.Map.Entry<String, JsonNode>>) () -> line.json().fields())
                .spliterator(),
            false)
        .map(f -> f.getKey() + ": " + plain(f.getValue()))
        .toList();
  }

  private static String content(RecordLine line) {
    if (!line.kind().equals(Entry.SET)) {
      return rest(line.json());
    }
    try {
      SetEntry set = SetLineReader.read(line);
      return Words.say(
          "record.set",
          Words.say(set.leg() == Side.LEFT ? "advice.leg.left" : "advice.leg.right"),
          set.step(),
          set.asked().target(),
          set.load().map(l -> l.mass() + " " + l.kind().word()).orElse("-"),
          set.counts().cleanReps(),
          set.counts().reps(),
          Words.say(
              set.pain() == Pain.YES
                  ? "record.pain.yes"
                  : set.pain() == Pain.NO ? "record.pain.no" : "record.pain.not-asked"),
          set.purpose().word());
    } catch (LineFields.Wrong wrong) {
      return rest(line.json());
    }
  }

  private static String rest(ObjectNode json) {
    return StreamSupport.stream(
            ((Iterable<java.util.Map.Entry<String, JsonNode>>) json::fields).spliterator(), false)
        .filter(f -> !TOLD.contains(f.getKey()))
        .map(f -> f.getKey() + " " + plain(f.getValue()))
        .collect(Collectors.joining(", "));
  }

  private static String plain(JsonNode value) {
    return (value.isTextual() ? value.textValue() : value.toString()).replaceAll("\\p{Cntrl}", " ");
  }
}
