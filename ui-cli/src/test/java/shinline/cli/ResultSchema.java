package shinline.cli;

import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.util.Set;

/** The published schema, which every JSON of the tests must fit. */
public final class ResultSchema {
  private ResultSchema() {}

  /** What does not fit; empty when all does. */
  public static Set<ValidationMessage> complaints(String json) throws IOException {
    return Schemas.complaints("result-format.schema.json", json);
  }
}
