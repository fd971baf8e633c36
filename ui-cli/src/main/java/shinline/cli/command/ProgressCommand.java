package shinline.cli.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.context.CommandContext;
import shinline.cli.file.Claim;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.WholeFile;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
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
@Command(
    name = "progress",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class ProgressCommand implements Callable<Integer> {
  @Parameters(paramLabel = "ATHLETE", descriptionKey = "shinline.shared.athlete")
  private AthleteName athlete;

  @Option(names = "--out", paramLabel = "FILE.html")
  private @Nullable Path out;

  @Mixin private LadderOption ladder;
  @Mixin private final RecordPlace place;

  private final CommandContext context;

  @SuppressWarnings("NullAway.Init") // picocli sets the athlete and mixins
  public ProgressCommand(CommandContext context, Clock clock) {
    this.context = context;
    place = new RecordPlace(context, clock);
  }

  @Override
  public Integer call() {
    RecordStore store = place.store();
    try (OutputFiles files = new OutputFiles(List.of(store.folder().lines()))) {
      return show(store, files);
    }
  }

  private int show(RecordStore store, OutputFiles files) {
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
    return ExitCode.MEASURED.number();
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
