package shinline.cli.record;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * The text of the record without an athlete.
 *
 * @param gone lines that went
 */
record Removal(String kept, int gone) {

  /**
   * Every line of the athlete goes, with the corrections and reviews of those. A line that cannot
   * be read goes when the name stands in it. A line that was written under the name and corrected
   * to another athlete stays under that other name.
   */
  static Removal of(String text, AthleteName athlete) {
    RecordLines record = RecordLines.parse(text);
    Corrections corrections = new Corrections(record);
    Set<String> ids = new HashSet<>();
    for (RecordLine line : record.lines()) {
      if (corrections.applyTo(line).athlete().filter(athlete::sameAs).isPresent()
          && !line.kind().equals(Entry.CORRECTION)) {
        ids.add(line.id());
      }
    }
    // Corrections of corrections and reviews, however deep.
    boolean more = true;
    while (more) {
      more = false;
      for (RecordLine line : record.lines()) {
        more |= line.of().filter(ids::contains).isPresent() && ids.add(line.id());
      }
    }
    StringBuilder kept = new StringBuilder();
    int gone = 0;
    for (String row : text.split("\n", -1)) {
      if (row.isBlank()) {
        continue;
      }
      Optional<ObjectNode> json = Json.parse(row);
      Optional<RecordLine> line = json.map(j -> new RecordLine(0, j));
      boolean goes =
          line.isPresent()
              ? Json.text(line.get().json(), "id").filter(ids::contains).isPresent()
                  || (!isKnown(line.get(), record) && named(line.get(), athlete))
              : new AthleteName(row).key().contains(athlete.key());
      if (goes) {
        gone++;
      } else if (line.isPresent() && named(line.get(), athlete)) {
        kept.append(underOtherName(line.get(), record, corrections)).append('\n');
      } else {
        kept.append(row).append('\n');
      }
    }
    return new Removal(kept.toString(), gone);
  }

  private static boolean named(RecordLine line, AthleteName athlete) {
    return line.athlete().filter(athlete::sameAs).isPresent();
  }

  private static boolean isKnown(RecordLine line, RecordLines record) {
    return Json.text(line.json(), "id").flatMap(record::withId).isPresent();
  }

  private static String underOtherName(
      RecordLine line, RecordLines record, Corrections corrections) {
    ObjectNode json = line.json().deepCopy();
    Optional<AthleteName> now =
        record.withId(line.id()).flatMap(l -> corrections.applyTo(l).athlete());
    if (now.isPresent() && !line.kind().equals(Entry.CORRECTION)) {
      json.put("athlete", now.get().written());
    } else {
      json.remove("athlete");
    }
    return Json.text(json);
  }
}
