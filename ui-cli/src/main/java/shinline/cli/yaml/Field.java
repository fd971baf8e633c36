package shinline.cli.yaml;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import shinline.cli.words.Words;

/**
 * A value in the file together with where it stands, so that whatever is wrong with it can be
 * pointed at. Reading a value of the wrong kind notes a problem and gives nothing.
 *
 * @param path dotted, empty for the whole file
 */
public record Field(String path, Node node, Problems problems) {
  /** Longest piece of the file repeated in a message. */
  private static final int QUOTED = 30;

  /** Notes a problem here; always empty, so that a reader can return it. */
  public <T> Optional<T> wrong(String what, String whatToDo) {
    problems.add(YamlSource.line(node.getStartMark()), path, what, whatToDo);
    return Optional.empty();
  }

  public boolean isMapping() {
    return node instanceof MappingNode;
  }

  public boolean isList() {
    return node instanceof SequenceNode;
  }

  /** The text of a single value, without outer blanks; empty when it is a list or has fields. */
  public Optional<String> word() {
    return node instanceof ScalarNode scalar
        ? Optional.of(scalar.getValue().strip())
        : Optional.empty();
  }

  /** The fields below this one; unknown and repeated names are noted and left out. */
  public Optional<List<Field>> fields(List<String> known) {
    String names = Words.say("yaml.fields.do", String.join(", ", known));
    if (!(node instanceof MappingNode mapping)) {
      return wrong(Words.say("yaml.fields.kind", shown()), names);
    }
    List<Field> fields = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (NodeTuple tuple : mapping.getValue()) {
      Field key = new Field(path, tuple.getKeyNode(), problems);
      Optional<String> name = key.word();
      if (name.isEmpty() || !known.contains(name.get())) {
        key.wrong(Words.say("yaml.field.unknown", key.shown()), names);
        continue;
      }
      String full = path.isEmpty() ? name.get() : path + "." + name.get();
      if (seen.add(name.get())) {
        fields.add(new Field(full, tuple.getValueNode(), problems));
      } else {
        new Field(full, tuple.getKeyNode(), problems)
            .wrong(Words.say("yaml.field.twice"), Words.say("yaml.field.twice.do"));
      }
    }
    return Optional.of(fields);
  }

  /** The values of a list, each under this field's own path. */
  public List<Field> items() {
    return node instanceof SequenceNode sequence
        ? sequence.getValue().stream().map(n -> new Field(path, n, problems)).toList()
        : List.of();
  }

  /** Last part of the path. */
  public String name() {
    return path.substring(path.lastIndexOf('.') + 1);
  }

  /** What stands here, for a message. */
  public String shown() {
    if (isMapping()) {
      return Words.say("yaml.shown.group");
    } else if (isList()) {
      return Words.say("yaml.shown.list");
    }
    String text = word().orElse("").replaceAll("\\p{Cntrl}", " ");
    if (text.isEmpty()) {
      return Words.say("yaml.shown.nothing");
    }
    return "\""
        + (text.codePointCount(0, text.length()) > QUOTED
            ? text.substring(0, text.offsetByCodePoints(0, QUOTED)) + "..."
            : text)
        + "\"";
  }
}
