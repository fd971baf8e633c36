package shinline.cli.record;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Lines as they stand once every correction is taken in: each field a correction names replaces the
 * line's own, whole, in the order of the corrections. A correction may itself be corrected.
 */
final class Corrections {
  private static final Set<String> OWN = Set.of("schema", "id", "recordedAt", "kind", "of");

  private final Map<String, List<RecordLine>> byTarget = new HashMap<>();

  Corrections(RecordLines record) {
    for (RecordLine line : record.lines()) {
      if (line.kind().equals(Entry.CORRECTION)) {
        line.of().ifPresent(id -> byTarget.computeIfAbsent(id, i -> new ArrayList<>()).add(line));
      }
    }
  }

  RecordLine applyTo(RecordLine line) {
    return applyTo(line, new HashSet<>());
  }

  private RecordLine applyTo(RecordLine line, Set<String> underWay) {
    // Two corrections that name each other would go round for ever.
    if (!underWay.add(line.id())) {
      return line;
    }
    ObjectNode json = line.json().deepCopy();
    for (RecordLine correction : byTarget.getOrDefault(line.id(), List.of())) {
      applyTo(correction, underWay)
          .json()
          .fields()
          .forEachRemaining(
              field -> {
                if (!OWN.contains(field.getKey())) {
                  json.set(field.getKey(), field.getValue());
                }
              });
    }
    underWay.remove(line.id());
    return new RecordLine(line.number(), json);
  }
}
