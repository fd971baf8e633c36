package shinline.cli.command;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.place.ProgramFolder;
import shinline.cli.words.Words;

/** {@code shinline tidy}: removes what the program unpacked on this computer. */
@Command(
    name = "tidy",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class TidyCommand implements Callable<Integer> {
  private final CommandContext surroundings;
  private final ProgramFolder folder;

  public TidyCommand(CommandContext surroundings, ProgramFolder folder) {
    this.surroundings = surroundings;
    this.folder = folder;
  }

  @Override
  public Integer call() {
    try {
      double megabytes = folder.bytes() / 1e6;
      if (!folder.remove()) {
        throw CoachException.usage(Words.say("tidy.busy", folder.place()));
      }
      surroundings.out().println(Words.say("tidy.done", folder.place(), megabytes));
      return ExitCode.MEASURED.number();
    } catch (IOException e) {
      throw CoachException.usage(Words.say("tidy.failed", folder.place()));
    }
  }
}
