package shinline.cli.yaml;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** What came of reading a coach's YAML file. */
public sealed interface YamlReading<T> {

  /** The file is good. */
  record Read<T>(T value) implements YamlReading<T> {}

  /**
   * The file is not.
   *
   * @param problems all that were found, at least one, in the order of the file
   */
  record Refused<T>(List<Problem> problems) implements YamlReading<T> {
    public Refused {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("refused without a problem");
      }
    }

    /** The problems below a heading, each with the file's name. */
    public String under(String heading, Path file) {
      String name = String.valueOf(file.getFileName());
      return problems.stream()
          .map(p -> "\n  " + p.text(name))
          .collect(Collectors.joining("", heading, ""));
    }
  }

  default <R> R fold(Function<T, R> read, Function<Refused<T>, R> refused) {
    return this instanceof Read<T> r ? read.apply(r.value()) : refused.apply((Refused<T>) this);
  }

  /** A file that cannot be opened is refused like any other. */
  static <T> YamlReading<T> ofFile(Path file, Function<String, YamlReading<T>> parse) {
    Problems problems = new Problems();
    return YamlText.read(file, problems).map(parse).orElseGet(() -> new Refused<>(problems.all()));
  }

  /**
   * @param problems take in what is wrong with the text, and what {@code fields} finds
   * @param empty what is wrong with a text without content, and what to do
   * @param fields takes in the root
   * @param value what was taken in, when nothing is wrong
   */
  static <T> YamlReading<T> of(
      String text, Problems problems, EmptyText empty, Consumer<Field> fields, Supplier<T> value) {
    // Some editors put a mark in front of the text that means nothing in UTF-8.
    String yaml = text.startsWith("\uFEFF") ? text.substring(1) : text;
    // A file of nothing but "---" has a root, with nothing in it.
    Optional<Node> root =
        YamlSource.root(yaml, problems)
            .filter(n -> !(n instanceof ScalarNode scalar && scalar.getValue().isEmpty()));
    if (root.isEmpty() && problems.isEmpty()) {
      problems.add(OptionalInt.empty(), "", empty.what(), empty.whatToDo());
    }
    root.ifPresent(node -> fields.accept(new Field("", node, problems)));
    return problems.isEmpty() ? new Read<>(value.get()) : new Refused<>(problems.all());
  }

  /** What is said of a text without content. */
  record EmptyText(String what, String whatToDo) {}
}
