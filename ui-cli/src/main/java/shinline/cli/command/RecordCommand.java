package shinline.cli.command;

import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import shinline.cli.context.CommandContext;
import shinline.cli.context.Question;
import shinline.cli.words.Words;

/** {@code shinline record}: the record of the athletes, read and added to. */
@Command(
    name = "record",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    synopsisSubcommandLabel = "COMMAND")
public final class RecordCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @SuppressWarnings("NullAway.Init") // picocli sets the spec
  private RecordCommand() {}

  /** The command with those under it. */
  public static CommandLine line(CommandContext context, Clock clock, Question question) {
    return new CommandLine(new RecordCommand())
        .addSubcommand(new RecordListCommand(context, clock))
        .addSubcommand(new RecordShowCommand(context, clock))
        .addSubcommand(new RecordAddCommand(context, clock))
        .addSubcommand(new RecordCorrectCommand(context, clock))
        .addSubcommand(new RecordReviewCommand(context, clock))
        .addSubcommand(new RecordAthleteCommand(context, clock))
        .addSubcommand(new RecordNoteCommand.Clear(context, clock))
        .addSubcommand(new RecordNoteCommand.Gate(context, clock))
        .addSubcommand(new RecordNoteCommand.Release(context, clock))
        .addSubcommand(new RecordNoteCommand.Overrule(context, clock))
        .addSubcommand(new RecordExportCommand(context, clock))
        .addSubcommand(new RecordRemoveCommand(context, clock, question));
  }

  @Override
  public Integer call() {
    throw new ParameterException(spec.commandLine(), Words.say("record.none"));
  }
}
