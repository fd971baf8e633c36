package shinline.cli.command;

import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.AthleteName;
import shinline.cli.record.RecordWriting;
import shinline.cli.words.Words;

/** {@code shinline record add}: a set judged by eye. */
@Command(
    name = "add",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
final class RecordAddCommand implements Callable<Integer> {
  @Parameters(paramLabel = "ATHLETE", descriptionKey = "shinline.shared.athlete")
  private AthleteName athlete;

  @Mixin private SetOptions options;
  @Mixin private final RecordPlace place;

  private final CommandContext context;

  @SuppressWarnings("NullAway.Init") // picocli sets the athlete and mixins
  RecordAddCommand(CommandContext context, Clock clock) {
    this.context = context;
    place = new RecordPlace(context, clock);
  }

  @Override
  public Integer call() {
    return place
        .store()
        .appendSet(RecordWriting.set(athlete, options.fields(), place.today()))
        .fold(
            added -> {
              context.say(Words.say("record.added", added.id()));
              return ExitCode.MEASURED.number();
            },
            there -> {
              context.complain(Words.say("record.clip-there", there.id()));
              return ExitCode.MEASURED.number();
            });
  }
}
