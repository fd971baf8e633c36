package shinline.cli;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

/** The published schema, which every JSON of the tests must fit. */
public final class ResultSchema {
  private ResultSchema() {}

  /** What does not fit; empty when all does. */
  public static Set<ValidationMessage> complaints(String json) throws IOException {
    JsonSchema schema =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(Files.readString(Path.of("..", "docs", "result-format.schema.json")));
    return schema.validate(json, InputFormat.JSON);
  }
}
