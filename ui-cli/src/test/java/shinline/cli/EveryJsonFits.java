package shinline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.lang.reflect.Field;
import java.nio.charset.MalformedInputException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.io.TempDir;

/**
 * After each test: every JSON that it left in its folders and that says which schema it follows,
 * fits that schema. JUnit finds it by itself, so that no test can forget it.
 */
public final class EveryJsonFits implements AfterEachCallback {
  /** On a test that writes what does not fit, to see it refused. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.METHOD)
  public @interface WritesWhatDoesNotFit {}

  private static final ObjectMapper JSON = new ObjectMapper();

  /** A calibration is the program's own resource: its reader checks it, no schema is published. */
  private static final Map<String, String> PUBLISHED =
      Map.of(
          "shinline-result/1", "result-format.schema.json",
          "shinline-record/1", "record.schema.json",
          "shinline-advice/1", "advice.schema.json");

  @Override
  public void afterEach(ExtensionContext context) throws Exception {
    if (context.getRequiredTestMethod().isAnnotationPresent(WritesWhatDoesNotFit.class)) {
      return;
    }
    Object test = context.getRequiredTestInstance();
    for (Field field : test.getClass().getDeclaredFields()) {
      if (field.isAnnotationPresent(TempDir.class) && field.getType() == Path.class) {
        field.setAccessible(true);
        assertFit((Path) field.get(test));
      }
    }
  }

  /** Looks at every {@code .json} and every line of every {@code .jsonl} below a folder. */
  static void assertFit(Path folder) throws IOException {
    for (Path file : below(folder)) {
      String name = String.valueOf(file.getFileName());
      if (name.endsWith(".json")) {
        assertFits(file, read(file));
      } else if (name.endsWith(".jsonl")) {
        for (String line : read(file).split("\n")) {
          assertFits(file, line);
        }
      }
    }
  }

  /** A browser that runs takes files of its profile away while they are listed. */
  private static List<Path> below(Path folder) throws IOException {
    List<Path> files = new ArrayList<>();
    Files.walkFileTree(
        folder,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            if (attributes.isRegularFile()) {
              files.add(file);
            }
            return FileVisitResult.CONTINUE;
          }

          @Override
          public FileVisitResult visitFileFailed(Path file, IOException why) throws IOException {
            if (why instanceof NoSuchFileException) {
              return FileVisitResult.CONTINUE;
            }
            throw why;
          }
        });
    return files;
  }

  private static String read(Path file) throws IOException {
    try {
      return Files.readString(file);
    } catch (MalformedInputException notText) {
      return "";
    }
  }

  private static void assertFits(Path file, String text) throws IOException {
    String schema = PUBLISHED.get(schemaOf(text));
    if (schema != null) {
      assertThat(Schemas.complaints(schema, text)).as("%s: %s", file, text).isEmpty();
    }
  }

  private static String schemaOf(String text) {
    try {
      JsonNode root = JSON.readTree(text);
      return root == null ? "" : root.path("schema").asText("");
    } catch (JsonProcessingException notJson) {
      return "";
    }
  }
}
