package shinline.cli.finding;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.util.Optional;
import shinline.cli.json.JsonRecords;

/** A finding as a file of the cache: this program's own, read by the version that wrote it only. */
final class FindingJson {
  private static final ObjectMapper MAPPER =
      JsonRecords.mapper()
          .enable(
              SerializationFeature.ORDER_MAP_ENTRIES_BY_KEYS, SerializationFeature.INDENT_OUTPUT)
          .build();

  private FindingJson() {}

  static String write(ClipFinding finding) {
    try {
      return MAPPER.writeValueAsString(finding) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a record of plain values can be written", e);
    }
  }

  /** Empty for a file that this version did not write. */
  static Optional<ClipFinding> read(String text) {
    try {
      return Optional.ofNullable(MAPPER.readValue(text, ClipFinding.class));
    } catch (JsonProcessingException e) {
      return Optional.empty();
    }
  }
}
