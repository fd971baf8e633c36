package shinline.cli;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The published schemas, which every JSON of the tests must fit. */
public final class Schemas {
  private static final Map<String, JsonSchema> READ = new ConcurrentHashMap<>();

  private Schemas() {}

  /** What does not fit; empty when all does. */
  public static Set<ValidationMessage> complaints(String schema, String json) throws IOException {
    JsonSchema read = READ.get(schema);
    if (read == null) {
      read =
          JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
              .getSchema(Files.readString(Path.of("..", "docs", schema)));
      READ.put(schema, read);
    }
    return read.validate(json, InputFormat.JSON);
  }
}
