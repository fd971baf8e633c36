package shinline.cli.yaml;

import java.util.Optional;
import java.util.OptionalInt;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import shinline.cli.words.Words;

/**
 * Text to a tree of nodes, for the part of YAML a coach's file needs: one document, no anchors, no
 * tags, no deep nesting.
 *
 * <p>The events are looked at before the tree is built, because the tree is built by recursion: a
 * file of nothing but brackets would overflow the stack, and aliases can multiply a small file into
 * a huge tree.
 */
public final class YamlSource {
  /** No file of ours nests deeper than five. */
  private static final int MAX_DEPTH = 8;

  private YamlSource() {}

  /** Root of the tree, or empty when the text is unusable (a problem is then noted) or blank. */
  public static Optional<Node> root(String text, Problems problems) {
    if (tabsIn(text, problems)) {
      return Optional.empty();
    }
    LoadSettings settings = LoadSettings.builder().setLabel("file").build();
    try {
      Scan scan = new Scan(problems);
      for (Event event : new Parse(settings).parseString(text)) {
        if (!scan.admits(event)) {
          return Optional.empty();
        }
      }
      return new Compose(settings).composeString(text);
    } catch (MarkedYamlEngineException e) {
      Optional<Mark> mark = e.getProblemMark().or(e::getContextMark);
      problems.add(line(mark), "", Words.say("yaml.bad", e.getProblem()), Words.say("yaml.bad.do"));
    } catch (YamlEngineException e) {
      problems.add(OptionalInt.empty(), "", Words.say("yaml.signs"), Words.say("yaml.signs.do"));
    }
    return Optional.empty();
  }

  static OptionalInt line(Optional<Mark> mark) {
    return mark.map(m -> OptionalInt.of(m.getLine() + 1)).orElse(OptionalInt.empty());
  }

  private static boolean tabsIn(String text, Problems problems) {
    boolean found = false;
    int number = 0;
    for (String line : (Iterable<String>) text.lines()::iterator) {
      number++;
      String indent = line.substring(0, line.length() - line.stripLeading().length());
      if (indent.indexOf('\t') >= 0 && !line.isBlank()) {
        problems.add(OptionalInt.of(number), "", Words.say("yaml.tab"), Words.say("yaml.tab.do"));
        found = true;
      }
    }
    return found;
  }

  /** One pass over the events, up to the first that a target has no use for. */
  private static final class Scan {
    private final Problems problems;
    private int depth;
    private int documents;

    Scan(Problems problems) {
      this.problems = problems;
    }

    boolean admits(Event event) {
      if (event instanceof AliasEvent
          || (event instanceof NodeEvent node && node.getAnchor().isPresent())) {
        return refuse(event, Words.say("yaml.anchor"), Words.say("yaml.value.do"));
      }
      if (tagged(event)) {
        return refuse(event, Words.say("yaml.type"), Words.say("yaml.value.do"));
      }
      if (event instanceof CollectionStartEvent && ++depth > MAX_DEPTH) {
        return refuse(event, Words.say("yaml.deep"), Words.say("yaml.deep.do"));
      }
      if (event instanceof CollectionEndEvent) {
        depth--;
      }
      if (event instanceof DocumentStartEvent && ++documents > 1) {
        return refuse(event, Words.say("yaml.second"), Words.say("yaml.second.do"));
      }
      return true;
    }

    private static boolean tagged(Event event) {
      return event instanceof ScalarEvent scalar
          ? scalar.getTag().isPresent()
          : event instanceof CollectionStartEvent start && start.getTag().isPresent();
    }

    private boolean refuse(Event event, String what, String whatToDo) {
      problems.add(line(event.getStartMark()), "", what, whatToDo);
      return false;
    }
  }
}
