package shinline.cli.record;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/**
 * One entry as it stands in the file, with every field, known or not.
 *
 * @param number of the line, from 1
 */
public record RecordLine(int number, ObjectNode json) {

  /** Its id; a line written by hand without one goes by its number. */
  public String id() {
    return Json.text(json, "id").orElse("line-" + number);
  }

  public String kind() {
    return Json.text(json, "kind").orElse("");
  }

  public Optional<AthleteName> athlete() {
    return Json.text(json, "athlete").map(AthleteName::new);
  }

  Optional<String> of() {
    return Json.text(json, "of");
  }
}
