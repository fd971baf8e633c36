package shinline.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.accuracy.AccuracyRun;
import shinline.cli.check.ClipChecker;
import shinline.cli.context.CommandContext;
import shinline.cli.file.Claim;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.WholeFile;
import shinline.cli.text.ModelWords;
import shinline.vision.pose.PoseModel;

/** {@code shinline accuracy}: scores the program against clips whose truth is known. */
@Command(
    name = "accuracy",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class AccuracyCommand implements Callable<Integer> {
  @Parameters(paramLabel = "FOLDER", descriptionKey = "folder")
  private Path folder;

  @Option(
      names = "--height-from-truth",
      negatable = true,
      defaultValue = "true",
      fallbackValue = "true")
  private boolean heightFromTruth;

  @Option(names = "--model", paramLabel = "MODEL", defaultValue = "accurate")
  private PoseModel model;

  @Option(names = "--out", paramLabel = "FILE")
  private @Nullable Path out;

  @Option(names = "--cameras", paramLabel = "FOLDER")
  private @Nullable Path cameras;

  @Mixin private LimitOptions limits;

  private final CommandContext surroundings;
  private final ClipChecker checker;

  @SuppressWarnings("NullAway.Init") // picocli sets the folder, mixin and options with defaults
  public AccuracyCommand(CommandContext surroundings, ClipChecker checker) {
    this.surroundings = surroundings;
    this.checker = checker;
  }

  @Override
  public Integer call() {
    try (OutputFiles files = new OutputFiles(List.of())) {
      return report(Optional.ofNullable(out).map(f -> files.file(f, Claim.NAMED)));
    }
  }

  private int report(Optional<WholeFile> page) {
    page.ifPresent(WholeFile::checkWritable);
    AccuracyRun run =
        new AccuracyRun(
            surroundings,
            checker.within(limits.limits()),
            model,
            heightFromTruth ? AccuracyRun.Height.FROM_TRUTH : AccuracyRun.Height.UNKNOWN);
    List<String> lines = run.report(folder, Optional.ofNullable(cameras), line(), page);
    lines.forEach(surroundings.out()::println);
    surroundings.out().flush();
    return run.exitCode().number();
  }

  /** The command without the folders above: a report must not tell where a coach keeps clips. */
  private String line() {
    return "shinline accuracy "
        + name(folder)
        + (cameras == null ? "" : " --cameras " + name(cameras))
        + " --model "
        + ModelWords.of(model)
        + (heightFromTruth ? "" : " --no-height-from-truth");
  }

  private static String name(Path of) {
    Path name = of.toAbsolutePath().normalize().getFileName();
    return name == null ? "." : name.toString();
  }
}
