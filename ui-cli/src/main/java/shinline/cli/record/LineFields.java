package shinline.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import shinline.cli.words.Words;

/** Fields of a line, read strictly; what is wrong names the field. */
final class LineFields {
  private final JsonNode node;
  private final String path;

  LineFields(ObjectNode node) {
    this(node, "");
  }

  private LineFields(JsonNode node, String path) {
    this.node = node;
    this.path = path;
  }

  /** A field of a line is not what it should be. */
  static final class Wrong extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Wrong(String message) {
      super(message);
    }

    String what() {
      return String.valueOf(getMessage());
    }
  }

  /** The fields of a group; none when it is not there. */
  LineFields group(String name) {
    JsonNode part = node.get(name);
    if (part != null && !part.isNull() && !part.isObject()) {
      throw wrong(name, part);
    }
    return new LineFields(
        part == null || part.isNull() ? MissingNode.getInstance() : part, path + name + ".");
  }

  JsonNode raw() {
    return node;
  }

  Optional<String> text(String name) {
    Optional<JsonNode> field = field(name);
    if (field.isPresent() && !field.get().isTextual()) {
      throw wrong(name, field.get());
    }
    return field.map(f -> f.textValue().strip()).filter(t -> !t.isEmpty());
  }

  Optional<LocalDate> date(String name) {
    Optional<String> text = text(name);
    try {
      return text.map(LocalDate::parse);
    } catch (DateTimeException e) {
      throw new Wrong(Words.say("record.field.date", path + name, text.orElse("")));
    }
  }

  /** A word that stands for a constant. */
  <T> Optional<T> word(String name, Function<String, Optional<T>> of) {
    Optional<String> text = text(name);
    Optional<T> found = text.flatMap(of);
    if (text.isPresent() && found.isEmpty()) {
      throw new Wrong(Words.say("record.field.word", path + name, text.get()));
    }
    return found;
  }

  /** A whole number, 0 or more. */
  Optional<Integer> count(String name) {
    Optional<JsonNode> field = field(name);
    // 8.0 is 8: spreadsheets and scripts write it.
    Optional<BigDecimal> number = field.filter(JsonNode::isNumber).map(JsonNode::decimalValue);
    Optional<Integer> count =
        number
            .filter(n -> n.stripTrailingZeros().scale() <= 0 && n.signum() >= 0)
            .filter(n -> n.compareTo(BigDecimal.valueOf(100_000)) < 0)
            .map(BigDecimal::intValueExact);
    if (field.isPresent() && count.isEmpty()) {
      throw wrong(name, field.get());
    }
    return count;
  }

  /** A decimal, 0 or more. */
  Optional<BigDecimal> decimal(String name) {
    Optional<JsonNode> field = field(name);
    Optional<BigDecimal> number =
        field
            .filter(JsonNode::isNumber)
            .map(JsonNode::decimalValue)
            .filter(n -> n.signum() >= 0 && n.precision() - n.scale() < 9);
    if (field.isPresent() && number.isEmpty()) {
      throw wrong(name, field.get());
    }
    return number;
  }

  Optional<Boolean> yesOrNo(String name) {
    Optional<JsonNode> field = field(name);
    if (field.isPresent() && !field.get().isBoolean()) {
      throw wrong(name, field.get());
    }
    return field.map(JsonNode::booleanValue);
  }

  /** What has to be there. */
  <T> T need(String name, Optional<T> value) {
    return value.orElseThrow(() -> new Wrong(Words.say("record.field.lacks", path + name)));
  }

  private Optional<JsonNode> field(String name) {
    return Optional.ofNullable(node.get(name)).filter(n -> !n.isNull());
  }

  private Wrong wrong(String name, JsonNode value) {
    String shown = value.toString();
    return new Wrong(
        Words.say(
            "record.field.kind",
            path + name,
            shown.length() > 30 ? shown.substring(0, 30) + "..." : shown));
  }
}
