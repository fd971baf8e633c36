package shinline.cli.command;

import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.AthleteName;
import shinline.cli.record.LineText;
import shinline.cli.record.RecordLine;
import shinline.cli.record.RecordView;
import shinline.cli.words.Words;

/** {@code shinline record list}: the athletes, or the lines of one. */
@Command(
    name = "list",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
final class RecordListCommand implements Callable<Integer> {
  @Parameters(arity = "0..1", paramLabel = "ATHLETE", descriptionKey = "shinline.shared.athlete")
  private @Nullable AthleteName athlete;

  @Mixin private final RecordPlace place;

  private final CommandContext context;

  @SuppressWarnings("NullAway.Init") // picocli sets the mixin
  RecordListCommand(CommandContext context, Clock clock) {
    this.context = context;
    place = new RecordPlace(context, clock);
  }

  @Override
  public Integer call() {
    RecordView view = place.view();
    if (athlete != null) {
      List<RecordLine> lines = view.linesOf(athlete);
      lines.stream().map(LineText::of).forEach(context.out()::println);
      place.of(view, athlete);
      if (lines.isEmpty()) {
        context.out().println(Words.say("record.nobody", athlete.written()));
      }
    } else {
      view.athletes()
          .forEach(
              name ->
                  context
                      .out()
                      .println(
                          Words.say("record.athlete", name.written(), view.linesOf(name).size())));
      if (view.athletes().isEmpty()) {
        context.out().println(Words.say("record.empty", place.store().folder().path()));
      }
    }
    context.out().flush();
    return ExitCode.MEASURED.number();
  }
}
