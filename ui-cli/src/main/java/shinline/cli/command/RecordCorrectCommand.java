package shinline.cli.command;

import java.time.Clock;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.AthleteName;
import shinline.cli.record.RecordLine;
import shinline.cli.record.RecordWriting;
import shinline.cli.words.Words;

/** {@code shinline record correct}: adds a line that changes fields of an earlier one. */
@Command(
    name = "correct",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
final class RecordCorrectCommand implements Callable<Integer> {
  @Parameters(paramLabel = "ID", descriptionKey = "shinline.shared.id")
  private String id;

  @Option(names = "--athlete", paramLabel = "ATHLETE")
  private @Nullable AthleteName athlete;

  @Option(names = "--field", paramLabel = "NAME=VALUE")
  private @Nullable Map<String, String> fields;

  @Mixin private SetOptions options;
  @Mixin private final RecordPlace place;

  private final CommandContext context;

  @SuppressWarnings("NullAway.Init") // picocli sets the id and mixins
  RecordCorrectCommand(CommandContext context, Clock clock) {
    this.context = context;
    place = new RecordPlace(context, clock);
  }

  @Override
  public Integer call() {
    RecordLine line = place.line(id);
    String added =
        place
            .store()
            .append(
                RecordWriting.correction(
                    line,
                    options.fields(),
                    Optional.ofNullable(athlete),
                    fields == null ? Map.of() : fields));
    context.say(Words.say("record.corrected", line.id(), added));
    return ExitCode.MEASURED.number();
  }
}
