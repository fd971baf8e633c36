package shinline.cli.record;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;

/** Entries a coach writes by hand, checked before they are added. */
public final class RecordWriting {
  private RecordWriting() {}

  /**
   * A set counted by eye, or one whose fields are all given.
   *
   * @throws CoachException naming what is lacking or wrong
   */
  public static Entry set(AthleteName athlete, SetFields given, LocalDate today) {
    ObjectNode fields = Json.object();
    fields.put("date", today.toString());
    fields.put("purpose", "work");
    fields.putNull("load");
    fields.putNull("pain");
    fields.put("source", "by-hand");
    fields.setAll(given.over(Json.object()));
    checked(new RecordLine(0, fields));
    return new Entry(Entry.SET, Optional.of(athlete), fields);
  }

  /**
   * Fields of a line that change.
   *
   * @param line as it stands now
   * @throws CoachException when the line would not count afterwards
   */
  public static Entry correction(
      RecordLine line, SetFields given, Optional<AthleteName> athlete, Map<String, String> more) {
    ObjectNode changed = given.over(line.json());
    more.forEach((name, value) -> changed.set(name, Json.value(value)));
    athlete.ifPresent(a -> changed.put("athlete", a.written()));
    if (changed.isEmpty()) {
      throw CoachException.usage(Words.say("record.correct.nothing"));
    }
    if (line.kind().equals(Entry.SET)) {
      ObjectNode after = line.json().deepCopy();
      after.setAll(changed);
      checked(new RecordLine(line.number(), after));
    }
    ObjectNode fields = Json.object();
    fields.put("of", line.id());
    fields.setAll(changed);
    return new Entry(Entry.CORRECTION, Optional.empty(), fields);
  }

  /** A flag the coach looked at. */
  public static Entry review(
      RecordLine set, String flag, Optional<Integer> rep, boolean dismissed) {
    ObjectNode fields = Json.object();
    fields.put("of", set.id());
    fields.put("flag", flag);
    rep.ifPresent(r -> fields.put("rep", r));
    fields.put("dismissed", dismissed);
    return new Entry(Entry.REVIEW, set.athlete(), fields);
  }

  /** Something noted for a date, with the fields of its kind. */
  public static Entry noted(
      String kind, AthleteName athlete, LocalDate date, Map<String, String> fields) {
    ObjectNode more = Json.object();
    fields.forEach(more::put);
    return Entry.dated(kind, athlete, date, more);
  }

  /** What is known of an athlete; each text is JSON or plain text. */
  public static Entry athlete(AthleteName athlete, Map<String, String> fields) {
    if (fields.isEmpty()) {
      throw CoachException.usage(Words.say("record.athlete.nothing"));
    }
    ObjectNode node = Json.object();
    fields.forEach((name, value) -> node.set(name, Json.value(value)));
    return new Entry(Entry.ATHLETE, Optional.of(athlete), node);
  }

  private static void checked(RecordLine line) {
    try {
      SetLineReader.read(line);
    } catch (LineFields.Wrong wrong) {
      throw CoachException.usage(Words.say("record.not-written", wrong.what()));
    }
  }
}
