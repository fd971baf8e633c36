package shinline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import shinline.cli.context.CommandContext;
import shinline.cli.words.Words;

/** The help of every command comes from the bundle, and the bundle explains nothing else. */
class HelpTest {
  private static Stream<CommandSpec> commands() {
    CommandContext context = PlainContext.of(new StringWriter(), new StringWriter());
    CommandLine line = Main.standard(context).commands();
    return withThoseUnder(line).map(CommandLine::getCommandSpec);
  }

  private static Stream<CommandLine> withThoseUnder(CommandLine line) {
    return Stream.concat(
        Stream.of(line), line.getSubcommands().values().stream().flatMap(HelpTest::withThoseUnder));
  }

  /** An option that several commands share has one text, under a key of its own. */
  private static Stream<String> keys(CommandSpec command) {
    String name = command.qualifiedName(".");
    return Stream.concat(
            Stream.of("usage.description"),
            command.args().stream().map(HelpTest::key).filter(k -> !k.startsWith("mixin")))
        .map(key -> key.startsWith("shinline.") ? key : name + "." + key);
  }

  private static String key(ArgSpec arg) {
    return arg.descriptionKey() == null || arg.descriptionKey().isEmpty()
        ? ((OptionSpec) arg).longestName().replaceFirst("^--", "")
        : arg.descriptionKey();
  }

  @Test
  void everyCommandOptionAndParameterIsExplained() {
    List<String> without = new ArrayList<>();
    commands()
        .flatMap(HelpTest::keys)
        .filter(key -> !Words.bundle().containsKey(key))
        .forEach(without::add);
    assertThat(without).isEmpty();
  }

  @Test
  void theHelpShowsWhatTheBundleSays() {
    commands()
        .forEach(
            command ->
                command
                    .args()
                    .forEach(
                        arg ->
                            assertThat(arg.description())
                                .as(command.qualifiedName() + " " + arg.paramLabel())
                                .isNotEmpty()));
  }

  @Test
  void nothingElseIsExplained() {
    Set<String> known = new TreeSet<>();
    commands()
        .forEach(
            command -> {
              keys(command).forEach(known::add);
              known.add(command.qualifiedName(".") + ".usage.footer");
            });
    assertThat(Words.bundle().keySet())
        .filteredOn(key -> key.startsWith("shinline."))
        .filteredOn(key -> !known.contains(key.replaceFirst("\\.\\d+$", "")))
        .isEmpty();
  }
}
