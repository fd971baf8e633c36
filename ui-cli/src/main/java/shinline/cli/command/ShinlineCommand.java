package shinline.cli.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import shinline.cli.words.Words;

/** The word before every command. */
@Command(
    name = "shinline",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND")
public final class ShinlineCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli sets the spec
  public ShinlineCommand() {}

  @Override
  public Integer call() {
    throw new ParameterException(spec.commandLine(), Words.say("command.none"));
  }
}
