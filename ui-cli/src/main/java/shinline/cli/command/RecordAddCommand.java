package shinline.cli.command;

import java.time.Clock;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.AthleteName;
import shinline.cli.record.RecordStore;
import shinline.cli.record.RecordWriting;
import shinline.cli.words.Words;

/** {@code shinline record add}: a set judged by eye. */
@Command(
    name = "add",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
final class RecordAddCommand implements Callable<Integer> {
  @Parameters(
      paramLabel = "ATHLETE",
      descriptionKey = "shinline.shared.athlete",
      converter = AthleteConverter.class)
  private AthleteName athlete;

  @Mixin private SetOptions options;
  @Mixin private RecordPlace place;

  private final CommandContext context;
  private final Clock clock;

  @SuppressWarnings("NullAway.Init") // picocli sets the athlete and mixins
  RecordAddCommand(CommandContext context, Clock clock) {
    this.context = context;
    this.clock = clock;
  }

  @Override
  public Integer call() {
    RecordStore store = place.store(clock);
    return store
        .appendSet(RecordWriting.set(athlete, options.fields(), LocalDate.now(clock)))
        .fold(
            added -> {
              context.out().println(Words.say("record.added", added.id()));
              context.out().flush();
              return ExitCode.MEASURED.number();
            },
            there -> {
              context.complain(Words.say("record.clip-there", there.id()));
              return ExitCode.MEASURED.number();
            });
  }
}
