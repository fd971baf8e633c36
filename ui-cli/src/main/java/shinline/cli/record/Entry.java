package shinline.cli.record;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/**
 * One entry that is to be written, before it has an id.
 *
 * @param kind one of the names below
 * @param athlete empty for a correction
 * @param fields of its kind, in the order they are written
 */
public record Entry(String kind, Optional<AthleteName> athlete, ObjectNode fields) {
  /** Name and version of the format. */
  public static final String SCHEMA = "shinline-record/1";

  /** A set done. */
  public static final String SET = "set";

  /** Fields of an earlier line that change. */
  public static final String CORRECTION = "correction";

  /** What is known of an athlete. */
  public static final String ATHLETE = "athlete";

  /** Cleared by a clinician after pain. */
  public static final String CLEARANCE = "clearance";

  /** A gate passed. */
  public static final String GATE = "gate";

  /** The coach's word for a step. */
  public static final String RELEASE = "release";

  /** A flag the coach looked at. */
  public static final String REVIEW = "review";

  /** The coach's own decision in place of the advice. */
  public static final String OVERRULE = "overrule";

  /** An entry that holds for a date. */
  static Entry dated(String kind, AthleteName athlete, LocalDate date, ObjectNode more) {
    ObjectNode fields = Json.object();
    fields.put("date", date.toString());
    fields.setAll(more);
    return new Entry(kind, Optional.of(athlete), fields);
  }

  /** The whole line. */
  ObjectNode line(String id, Instant recordedAt) {
    ObjectNode line = Json.object();
    line.put("schema", SCHEMA);
    line.put("id", id);
    line.put("recordedAt", recordedAt.toString());
    line.put("kind", kind);
    athlete.ifPresent(a -> line.put("athlete", a.written()));
    line.setAll(fields);
    return line;
  }
}
