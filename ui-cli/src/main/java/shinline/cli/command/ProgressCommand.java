package shinline.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import shinline.cli.context.CommandContext;
import shinline.cli.file.Claim;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.WholeFile;
import shinline.cli.outcome.CoachException;
import shinline.cli.progress.AthleteWeeks;
import shinline.cli.progress.ProgressPages;
import shinline.cli.progress.ProgressText;
import shinline.cli.record.AthleteName;
import shinline.cli.record.AthleteRecord;
import shinline.cli.record.RecordStore;
import shinline.cli.record.RecordView;
import shinline.cli.record.WrittenFiles;
import shinline.cli.text.Layout;
import shinline.cli.text.Units;
import shinline.cli.words.Words;

/** {@code shinline progress}: an athlete's weeks, as a page and as a table. */
@Command(name = "progress")
public final class ProgressCommand extends AthleteCommand {
  @Option(order = FIRST, names = "--out", paramLabel = "FILE.html")
  private @Nullable Path out;

  public ProgressCommand(CommandContext context, Clock clock) {
    super(context, clock);
  }

  @Override
  void tell(RecordStore store, OutputFiles files) {
    RecordView record = place.view();
    AthleteRecord known = place.of(record, athlete);
    if (record.linesOf(athlete).isEmpty()) {
      throw CoachException.usage(unknown(record));
    }
    WrittenFiles written = new WrittenFiles(store.folder());
    AthleteWeeks weeks =
        AthleteWeeks.of(
            known, record.measured(athlete), pictures(written), ladder.ladder().maximum());
    new ProgressText(weeks, new Layout(context.signs(), context.paint(), Units.METRIC))
        .lines()
        .forEach(context.out()::println);
    context.out().flush();
    ProgressPages pages = new ProgressPages(store, files, ladder.ladder().maximum());
    WholeFile page = out == null ? pages.beside(known.name()) : files.file(out, Claim.NAMED);
    pages.write(weeks, page);
    context.say(Words.say("progress.page", page.path()));
  }

  private String unknown(RecordView record) {
    return record.athletes().isEmpty()
        ? Words.say("progress.empty", athlete.written())
        : Words.say(
            "progress.unknown",
            athlete.written(),
            record.athletes().stream().map(AthleteName::written).collect(Collectors.joining(", ")));
  }

  private Map<String, Path> pictures(WrittenFiles written) {
    try {
      return written.bottoms(athlete);
    } catch (IOException unreadable) {
      context.complain(Words.say("progress.no-pictures", String.valueOf(unreadable.getMessage())));
      return Map.of();
    }
  }
}
