package shinline.cli.command;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import shinline.cli.check.ClipChecker;
import shinline.cli.context.CommandContext;
import shinline.cli.context.PageOpening;
import shinline.cli.demo.Demo;
import shinline.cli.outcome.ExitCode;
import shinline.cli.text.Cautions;
import shinline.cli.words.Words;

/** {@code shinline demo}: an invented squad to look at. */
@Command(
    name = "demo",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class DemoCommand implements Callable<Integer> {
  @Parameters(paramLabel = "FOLDER", descriptionKey = "folder")
  private Path folder;

  @Option(names = "--as-of", paramLabel = "DATE")
  private @Nullable LocalDate asOf;

  @Option(names = "--no-open")
  private boolean noOpen;

  private final CommandContext context;
  private final ClipChecker checker;
  private final Clock clock;
  private final PageOpening opening;

  @SuppressWarnings("NullAway.Init") // picocli sets the folder
  public DemoCommand(
      CommandContext context, ClipChecker checker, Clock clock, PageOpening opening) {
    this.context = context;
    this.checker = checker;
    this.clock = clock;
    this.opening = opening;
  }

  @Override
  public Integer call() {
    LocalDate lastDay = asOf == null ? LocalDate.now(clock) : asOf;
    Demo demo =
        new Demo(
            folder,
            lastDay,
            clock,
            checker,
            new Version().getVersion()[0],
            new ToldSession(context));
    ExitCode worst = demo.build();
    context.out().println(Words.say("invented.page"));
    context.out().println(Words.say("demo.written", demo.teamPage(), demo.record()));
    Cautions.safety().forEach(context.out()::println);
    context.out().flush();
    if (!noOpen) {
      opening.open(demo.teamPage());
    }
    return worst.number();
  }
}
