package shinline.cli.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.context.CommandContext;
import shinline.cli.csv.DecimalSign;
import shinline.cli.file.Claim;
import shinline.cli.file.OutputFiles;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.AthleteName;
import shinline.cli.record.RecordCsv;
import shinline.cli.record.RecordLine;
import shinline.cli.record.RecordStore;
import shinline.cli.record.RecordView;
import shinline.cli.words.Words;

/** {@code shinline record export}: the sets as a table for a spreadsheet. */
@Command(
    name = "export",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
final class RecordExportCommand implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", descriptionKey = "file")
  private Path file;

  @Option(names = "--athlete", paramLabel = "ATHLETE")
  private @Nullable AthleteName athlete;

  @Option(names = "--decimal", paramLabel = "point|comma", defaultValue = "point")
  private DecimalSign decimal;

  @Mixin private final RecordPlace place;

  private final CommandContext context;

  @SuppressWarnings("NullAway.Init") // picocli sets the file, the mixin and the default
  RecordExportCommand(CommandContext context, Clock clock) {
    this.context = context;
    place = new RecordPlace(context, clock);
  }

  @Override
  public Integer call() {
    RecordStore store = place.store();
    RecordView view = place.view();
    List<RecordLine> lines = athlete == null ? view.lines() : view.linesOf(athlete);
    try (OutputFiles files = new OutputFiles(List.of(store.folder().lines()))) {
      files.file(file, Claim.NAMED).write(writer -> RecordCsv.write(lines, decimal, writer));
    }
    context.say(Words.say("record.exported", file));
    return ExitCode.MEASURED.number();
  }
}
