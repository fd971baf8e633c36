package shinline.cli.command;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.check.ClipChecker;
import shinline.cli.context.CommandContext;
import shinline.cli.csv.DecimalSign;
import shinline.cli.file.OutputFiles;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.RecordStore;
import shinline.cli.session.Session;
import shinline.cli.session.SessionFolder;
import shinline.cli.sheet.NewSheet;
import shinline.cli.text.Cautions;
import shinline.cli.words.Words;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.ladder.Step;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.MassUnit;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.training.Purpose;

/** {@code shinline session}: a folder of clips and a sheet in, pages and a record out. */
@Command(
    name = "session",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class SessionCommand implements Callable<Integer> {
  private static final long LOOK_EVERY_MS = 2000;

  @Parameters(paramLabel = "FOLDER", descriptionKey = "folder")
  private Path folder;

  @Option(names = "--sheet", paramLabel = "FILE")
  private @Nullable Path sheet;

  @Option(names = "--new-sheet", paramLabel = "FILE")
  private @Nullable Path newSheet;

  @Option(names = "--watch")
  private boolean watch;

  @Option(names = "--decimal", paramLabel = "SIGN", defaultValue = "point")
  private DecimalSign decimal;

  @Mixin private final RecordPlace place;
  @Mixin private LadderOption ladder;
  @Mixin private LimitOptions limits;

  private final CommandContext context;
  private final ClipChecker checker;
  private final Clock clock;

  @SuppressWarnings("NullAway.Init") // picocli sets the folder, mixins and defaults
  public SessionCommand(CommandContext context, ClipChecker checker, Clock clock) {
    this.context = context;
    this.checker = checker;
    this.clock = clock;
    place = new RecordPlace(context, clock);
  }

  @Override
  public Integer call() {
    SessionFolder clips = SessionFolder.of(folder);
    RecordStore store = place.store();
    Ladder steps = ladder.ladder();
    if (newSheet != null) {
      if (sheet != null || watch) {
        throw CoachException.usage(Words.say("session.new-sheet-alone"));
      }
      return write(newSheet, clips, steps).number();
    }
    place.read();
    Session session =
        new Session(
            clips,
            Optional.ofNullable(sheet),
            new Session.Setting(
                checker.within(limits.limits()),
                new Version().getVersion()[0],
                store,
                steps,
                ladder.file(),
                decimal,
                clock,
                new ToldSession(context)));
    ExitCode worst;
    if (watch) {
      context.say(Words.say("session.watching", clips.output().resolve("board.html")));
      worst = session.watch(pause());
    } else {
      worst = session.once();
    }
    context.out().println(Words.say("session.written", clips.output().resolve("team.html")));
    Cautions.safety().forEach(context.out()::println);
    context.out().flush();
    return worst.number();
  }

  private ExitCode write(Path file, SessionFolder clips, Ladder steps) {
    LocalDate today = place.today();
    List<NewSheet.Filmed> filmed =
        clips.clips().stream()
            .map(
                c ->
                    new NewSheet.Filmed(
                        String.valueOf(c.getFileName()),
                        SessionFolder.day(c, clock.getZone()).orElse(today)))
            .toList();
    NewSheet empty = new NewSheet(filmed, place.view().athletes(), choices(steps), today);
    try (OutputFiles files = new OutputFiles(clips.clips())) {
      empty
          .write(file, files)
          .forEach(f -> context.out().println(Words.say("session.sheet-written", f)));
    }
    context.out().flush();
    return ExitCode.MEASURED;
  }

  private static List<NewSheet.Choice> choices(Ladder steps) {
    return List.of(
        new NewSheet.Choice("leg", List.of("left", "right")),
        new NewSheet.Choice("pain", List.of("yes", "no")),
        new NewSheet.Choice("step", steps.steps().stream().map(Step::id).toList()),
        new NewSheet.Choice(
            "target", Arrays.stream(ShinPreset.values()).map(ShinPreset::word).toList()),
        new NewSheet.Choice("depth", List.of("full", "short-range", "any")),
        new NewSheet.Choice(
            "load_unit", Arrays.stream(MassUnit.values()).map(MassUnit::word).toList()),
        new NewSheet.Choice(
            "load_kind", Arrays.stream(LoadKind.values()).map(LoadKind::word).toList()),
        new NewSheet.Choice(
            "purpose", Arrays.stream(Purpose.values()).map(Purpose::word).toList()));
  }

  /** Until the process is stopped: what is done is on the disk at any time. */
  private static BooleanSupplier pause() {
    return () -> {
      try {
        Thread.sleep(LOOK_EVERY_MS);
        return true;
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        return false;
      }
    };
  }
}
