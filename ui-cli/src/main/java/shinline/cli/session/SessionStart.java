package shinline.cli.session;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import shinline.cli.csv.DecimalSign;

/**
 * How the pages of a session were made, kept with its findings, so that they can be made again
 * without one of the athletes.
 *
 * @param ladder file of it; empty for the shipped one
 * @param version of the program
 * @param day as of which advice was given
 */
record SessionStart(
    Path folder,
    Optional<Path> sheet,
    Optional<Path> ladder,
    DecimalSign decimal,
    String version,
    LocalDate day) {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** Where it is kept in a session's output. */
  static Path place(Path output) {
    return output.resolve("kept").resolve("session.json");
  }

  String json() {
    ObjectNode node = JSON.createObjectNode();
    node.put("folder", absolute(folder));
    sheet.ifPresent(s -> node.put("sheet", absolute(s)));
    ladder.ifPresent(l -> node.put("ladder", absolute(l)));
    node.put("decimal", decimal.name());
    node.put("version", version);
    node.put("day", day.toString());
    return node + "\n";
  }

  private static String absolute(Path path) {
    return path.toAbsolutePath().normalize().toString();
  }

  /** Empty where none was kept, or not by this version. */
  static Optional<SessionStart> of(Path output, String version) {
    try {
      JsonNode node = JSON.readTree(Files.readString(place(output)));
      if (!node.path("version").asText().equals(version)) {
        return Optional.empty();
      }
      return Optional.of(
          new SessionStart(
              Path.of(node.path("folder").asText()),
              path(node, "sheet"),
              path(node, "ladder"),
              DecimalSign.valueOf(node.path("decimal").asText()),
              version,
              LocalDate.parse(node.path("day").asText())));
    } catch (JsonProcessingException | IllegalArgumentException | DateTimeException damaged) {
      return Optional.empty();
    } catch (IOException none) {
      return Optional.empty();
    }
  }

  private static Optional<Path> path(JsonNode node, String name) {
    return Optional.ofNullable(node.get(name)).map(n -> Path.of(n.asText()));
  }
}
