package shinline.cli.record;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;

/** One line of the record as JSON; numbers are decimals, as written. */
final class Json {
  private static final ObjectMapper MAPPER =
      JsonMapper.builder()
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
          .nodeFactory(JsonNodeFactory.withExactBigDecimals(true))
          .build();

  private Json() {}

  static ObjectNode object() {
    return MAPPER.createObjectNode();
  }

  /** The object a line holds; empty when it holds none. */
  static Optional<ObjectNode> parse(String line) {
    try {
      JsonNode node = MAPPER.readTree(line);
      return node instanceof ObjectNode object ? Optional.of(object) : Optional.empty();
    } catch (JsonProcessingException e) {
      return Optional.empty();
    }
  }

  /** What a text stands for: a JSON value, else the text itself. */
  static JsonNode value(String text) {
    try {
      JsonNode node = MAPPER.readTree(text);
      if (node != null && !node.isMissingNode()) {
        return node;
      }
    } catch (JsonProcessingException plain) {
      // a plain text
    }
    return MAPPER.getNodeFactory().textNode(text);
  }

  static String text(ObjectNode node) {
    try {
      return MAPPER.writeValueAsString(node);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain values can be written", e);
    }
  }

  /** A text field that is there and not blank. */
  static Optional<String> text(JsonNode node, String field) {
    return Optional.ofNullable(node.get(field))
        .filter(JsonNode::isTextual)
        .map(n -> n.textValue().strip())
        .filter(t -> !t.isEmpty());
  }
}
