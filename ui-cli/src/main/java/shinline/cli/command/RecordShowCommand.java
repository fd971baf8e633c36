package shinline.cli.command;

import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.LineText;

/** {@code shinline record show}: one line with every field, corrections applied. */
@Command(
    name = "show",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
final class RecordShowCommand implements Callable<Integer> {
  @Parameters(paramLabel = "ID", descriptionKey = "shinline.shared.id")
  private String id;

  @Mixin private final RecordPlace place;

  private final CommandContext context;

  @SuppressWarnings("NullAway.Init") // picocli sets the id and the mixin
  RecordShowCommand(CommandContext context, Clock clock) {
    this.context = context;
    place = new RecordPlace(context, clock);
  }

  @Override
  public Integer call() {
    LineText.fields(place.line(id)).forEach(context.out()::println);
    context.out().flush();
    return ExitCode.MEASURED.number();
  }
}
