package shinline.cli.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.accuracy.CalibrationRun;
import shinline.cli.check.ClipChecker;
import shinline.cli.context.CommandContext;
import shinline.cli.file.Claim;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.WholeFile;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;
import shinline.vision.pose.PoseModel;

/** {@code shinline calibrate}: fits the numbers of a pose model to clips whose truth is known. */
@Command(
    name = "calibrate",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class CalibrateCommand implements Callable<Integer> {
  /** Where the shipped calibrations lie in the source tree. */
  private static final Path SHIPPED = Path.of("resources", "shinline", "metrics", "calibration");

  @Parameters(paramLabel = "FOLDER", descriptionKey = "folder")
  private Path folder;

  @Option(names = "--out", paramLabel = "FILE", required = true)
  private Path out;

  @Option(names = "--model", paramLabel = "MODEL", defaultValue = "accurate")
  private PoseModel model;

  @Option(names = "--when", paramLabel = "DATE")
  private @Nullable LocalDate when;

  @Mixin private LimitOptions limits;

  private final CommandContext context;
  private final ClipChecker checker;

  @SuppressWarnings("NullAway.Init") // picocli sets the folder, mixin and options
  public CalibrateCommand(CommandContext context, ClipChecker checker) {
    this.context = context;
    this.checker = checker;
  }

  @Override
  public Integer call() {
    Path place = out.toAbsolutePath().normalize().getParent();
    if (place != null && place.endsWith(SHIPPED)) {
      throw CoachException.usage(Words.say("calibrate.shipped", out));
    }
    try (OutputFiles files = new OutputFiles(List.of())) {
      return fit(files.file(out, Claim.NAMED));
    }
  }

  private int fit(WholeFile file) {
    file.checkWritable();
    CalibrationRun run = new CalibrationRun(context, checker.within(limits.limits()), model);
    List<String> lines = run.report(folder, file, Optional.ofNullable(when));
    lines.forEach(context.out()::println);
    context.out().println(Words.say("calibrate.written", out));
    context.out().flush();
    return run.exitCode().number();
  }
}
