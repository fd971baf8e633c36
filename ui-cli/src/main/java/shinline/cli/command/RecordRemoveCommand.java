package shinline.cli.command;

import java.io.IOException;
import java.time.Clock;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.context.CommandContext;
import shinline.cli.context.Question;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.AthleteName;
import shinline.cli.record.RecordStore;
import shinline.cli.record.RecordView;
import shinline.cli.record.WrittenFiles;
import shinline.cli.session.SessionWithout;
import shinline.cli.words.Words;

/** {@code shinline record remove}: everything that was written of an athlete goes. */
@Command(
    name = "remove",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
final class RecordRemoveCommand implements Callable<Integer> {
  @Parameters(paramLabel = "ATHLETE", descriptionKey = "shinline.shared.athlete")
  private AthleteName athlete;

  @Option(names = "--yes")
  private boolean yes;

  @Mixin private final RecordPlace place;

  private final CommandContext context;
  private final Clock clock;
  private final Question question;

  @SuppressWarnings("NullAway.Init") // picocli sets the athlete and the mixin
  RecordRemoveCommand(CommandContext context, Clock clock, Question question) {
    this.context = context;
    this.clock = clock;
    place = new RecordPlace(context, clock);
    this.question = question;
  }

  @Override
  public Integer call() {
    RecordStore store = place.store();
    int lines = new RecordView(store.read()).linesOf(athlete).size();
    if (!yes && !agreed(lines)) {
      context.say(Words.say("record.remove.kept"));
      return ExitCode.MEASURED.number();
    }
    try {
      WrittenFiles.Deleted files = new WrittenFiles(store.folder()).delete(athlete);
      int gone = store.remove(athlete);
      context
          .out()
          .println(Words.say("record.removed", athlete.written(), gone, files.deleted().size()));
      files.left().forEach(f -> context.complain(Words.say("record.remove.left", f)));
      SessionWithout.Made pages =
          new SessionWithout(athlete, store, new Version().getVersion()[0], clock.getZone())
              .again(files.deleted());
      pages.again().forEach(p -> context.say(Words.say("record.remove.again", p)));
      pages.left().forEach(p -> context.complain(Words.say("record.remove.not-again", p)));
    } catch (IOException e) {
      throw CoachException.usage(Words.say("record.remove.failed", String.valueOf(e.getMessage())));
    }
    context.out().flush();
    return ExitCode.MEASURED.number();
  }

  private boolean agreed(int lines) {
    String answer =
        question
            .ask(Words.say("record.remove.ask", athlete.written(), lines))
            .orElseThrow(() -> CoachException.usage(Words.say("record.remove.nobody")));
    return answer.strip().toLowerCase(Locale.ROOT).startsWith(Words.say("record.remove.yes"));
  }
}
