package shinline.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.accuracy.AccuracyRun;
import shinline.cli.check.ClipChecker;
import shinline.cli.check.ModelChoice;
import shinline.cli.context.CommandContext;
import shinline.cli.file.WholeFile;

/** {@code shinline accuracy}: scores the program against clips whose truth is known. */
@Command(
    name = "accuracy",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false,
    description =
        "Measures every NAME.mp4 of a folder that has NAME.truth.json beside it, and says how far"
            + " the results are from the truth.",
    footer = {
      "",
      "Exit codes: 0 every clip scored; 2 wrong use, or the page could not be written;",
      "3 a clip or its truth could not be read; 4 a clip was read but not measured.",
      "A bad clip or truth file does not stop the others."
    })
public final class AccuracyCommand implements Callable<Integer> {
  @Parameters(paramLabel = "FOLDER", description = "Holds clips with their truth.")
  private Path folder;

  @Option(
      names = "--height-from-truth",
      negatable = true,
      defaultValue = "true",
      fallbackValue = "true",
      description =
          "Take the athlete's height from the truth file, as a coach would give it with --height"
              + " (default). Without it no centimetres are scored.")
  private boolean heightFromTruth;

  @Option(
      names = "--model",
      paramLabel = "MODEL",
      converter = CheckCommand.ModelConverter.class,
      defaultValue = "heavy",
      description = "Pose model: heavy or full, as for check. Default: heavy.")
  private ModelChoice model;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write the whole report here (Markdown), for example docs/accuracy.md.")
  private @Nullable Path out;

  private final CommandContext surroundings;
  private final ClipChecker checker;

  @SuppressWarnings("NullAway.Init") // picocli sets the folder and options with defaults
  public AccuracyCommand(CommandContext surroundings, ClipChecker checker) {
    this.surroundings = surroundings;
    this.checker = checker;
  }

  @Override
  public Integer call() {
    Optional<WholeFile> page = Optional.ofNullable(out).map(WholeFile::new);
    page.ifPresent(WholeFile::checkWritable);
    AccuracyRun run =
        new AccuracyRun(
            surroundings,
            checker,
            model,
            heightFromTruth ? AccuracyRun.Height.FROM_TRUTH : AccuracyRun.Height.UNKNOWN);
    List<String> lines = run.report(folder, line(), page);
    lines.forEach(surroundings.out()::println);
    surroundings.out().flush();
    return run.exitCode().number();
  }

  /** The command without the folders above: a report must not tell where a coach keeps clips. */
  private String line() {
    Path name = folder.toAbsolutePath().normalize().getFileName();
    return "shinline accuracy "
        + (name == null ? "." : name)
        + " --model "
        + model.word()
        + (heightFromTruth ? "" : " --no-height-from-truth");
  }
}
