package shinline.cli.command;

import java.time.Clock;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import shinline.cli.context.CommandContext;
import shinline.cli.file.OutputFiles;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.AthleteName;
import shinline.cli.record.RecordStore;

/** Tells something of an athlete on record. Options of their own come before those here. */
@Command(mixinStandardHelpOptions = true, versionProvider = Version.class, sortOptions = false)
abstract class AthleteCommand implements Callable<Integer> {
  /** Of an option that comes before those here. */
  static final int FIRST = -2;

  @Parameters(paramLabel = "ATHLETE", descriptionKey = "shinline.shared.athlete")
  AthleteName athlete;

  @Mixin LadderOption ladder;
  @Mixin final RecordPlace place;

  final CommandContext context;

  @SuppressWarnings("NullAway.Init") // picocli sets the athlete and mixins
  AthleteCommand(CommandContext context, Clock clock) {
    this.context = context;
    place = new RecordPlace(context, clock);
  }

  /** Prints and writes it. */
  abstract void tell(RecordStore store, OutputFiles files);

  @Override
  public Integer call() {
    RecordStore store = place.store();
    try (OutputFiles files = new OutputFiles(List.of(store.folder().lines()))) {
      tell(store, files);
    }
    return ExitCode.MEASURED.number();
  }
}
