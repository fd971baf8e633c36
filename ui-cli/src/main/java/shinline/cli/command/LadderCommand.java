package shinline.cli.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import shinline.cli.context.CommandContext;
import shinline.cli.file.Claim;
import shinline.cli.file.OutputFiles;
import shinline.cli.ladder.LadderFile;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.words.Words;
import shinline.metrics.ladder.Ladder;

/** {@code shinline ladder}: writes the shipped ladder to edit, and checks an edited one. */
@Command(
    name = "ladder",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class LadderCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(arity = "0..1", paramLabel = "FILE", descriptionKey = "file")
  private @Nullable Path file;

  @Option(names = "--new", paramLabel = "FILE")
  private @Nullable Path fresh;

  private final CommandContext context;

  @SuppressWarnings("NullAway.Init") // picocli sets the spec
  public LadderCommand(CommandContext context) {
    this.context = context;
  }

  @Override
  public Integer call() {
    if ((file == null) == (fresh == null)) {
      throw new ParameterException(spec.commandLine(), Words.say("ladder.what"));
    }
    if (fresh != null) {
      if (Files.exists(fresh)) {
        throw CoachException.usage(Words.say("ladder.there", fresh));
      }
      try (OutputFiles files = new OutputFiles(List.of())) {
        files.file(fresh, Claim.NAMED).write(writer -> writer.write(LadderFile.shippedText()));
      }
      context.out().println(Words.say("ladder.written", fresh));
    } else if (file != null) {
      Ladder ladder = LadderOption.read(file);
      context.out().println(Words.say("ladder.good", file.getFileName(), ladder.steps().size()));
      ladder
          .steps()
          .forEach(
              s ->
                  context
                      .out()
                      .println("  " + Words.say("ladder.step", s.id(), s.what(), s.tempo())));
    }
    context.out().flush();
    return ExitCode.MEASURED.number();
  }
}
