package shinline.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import shinline.cli.comparison.ResultComparison;
import shinline.cli.comparison.ResultComparison.Measured;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ExitCode;
import shinline.cli.words.Words;

/** {@code shinline compare}: what repeats, within the ±. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class CompareCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(arity = "1..2", paramLabel = "RESULT.json", descriptionKey = "results")
  private List<Path> results;

  @Option(names = "--measured", paramLabel = "WHAT=VALUE")
  private List<String> measured = List.of();

  @Option(names = "--rep", paramLabel = "N")
  private @Nullable Integer rep;

  private final CommandContext context;

  @SuppressWarnings("NullAway.Init") // picocli sets the results and the spec
  public CompareCommand(CommandContext context) {
    this.context = context;
  }

  @Override
  public Integer call() {
    if (results.size() == 2 && measured.isEmpty()) {
      print(ResultComparison.ofTwo(results.get(0), results.get(1)));
    } else if (results.size() == 1 && !measured.isEmpty()) {
      print(
          ResultComparison.ofMeasured(
              results.get(0),
              measured.stream().map(Measured::new).toList(),
              Optional.ofNullable(rep)));
    } else {
      throw new ParameterException(spec.commandLine(), Words.say("compare.two-or-measured"));
    }
    return ExitCode.MEASURED.number();
  }

  private void print(List<String> lines) {
    lines.forEach(context.out()::println);
    context.out().flush();
  }
}
