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

/** The published schemas of record and advice, which every JSON of the tests must fit. */
public final class Schemas {
  private Schemas() {}

  /** What does not fit; empty when all does. */
  public static Set<ValidationMessage> complaints(String schema, String json) throws IOException {
    JsonSchema read =
        JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
            .getSchema(Files.readString(Path.of("..", "docs", schema)));
    return read.validate(json, InputFormat.JSON);
  }
}
