package shinline.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import shinline.cli.check.ClipCheck;
import shinline.cli.check.ClipChecker;
import shinline.cli.check.PhotoCheck;
import shinline.cli.check.PhotoChecker;
import shinline.cli.command.AccuracyCommand;
import shinline.cli.command.AdviseCommand;
import shinline.cli.command.CalibrateCommand;
import shinline.cli.command.CheckCommand;
import shinline.cli.command.CompareCommand;
import shinline.cli.command.DemoCommand;
import shinline.cli.command.DoctorCommand;
import shinline.cli.command.LadderCommand;
import shinline.cli.command.OptionValues;
import shinline.cli.command.PhotoCommand;
import shinline.cli.command.ProgressCommand;
import shinline.cli.command.RecordCommand;
import shinline.cli.command.SessionCommand;
import shinline.cli.command.ShinlineCommand;
import shinline.cli.command.TidyCommand;
import shinline.cli.context.CommandContext;
import shinline.cli.context.PageOpening;
import shinline.cli.context.Question;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.place.LibraryPlace;
import shinline.cli.place.PreparedChecker;
import shinline.cli.place.ProgramFolder;
import shinline.cli.text.Paint;
import shinline.cli.text.Typography;
import shinline.cli.words.Words;

/** Entry point: ties commands to the process, and turns every failure into words and a code. */
public final class Main {
  private final CommandContext surroundings;
  private final ClipChecker checker;
  private final PhotoChecker photos;

  public Main(CommandContext surroundings, ClipChecker checker) {
    this(surroundings, checker, new PhotoCheck());
  }

  public Main(CommandContext surroundings, ClipChecker checker, PhotoChecker photos) {
    this.surroundings = surroundings;
    this.checker = checker;
    this.photos = photos;
  }

  public static void main(String[] args) {
    // Pictures are drawn without a screen; some systems would show an icon for it.
    System.setProperty("java.awt.headless", "true");
    Charset charset = terminalCharset();
    PrintWriter out = writer(FileDescriptor.out, charset);
    PrintWriter err = writer(FileDescriptor.err, charset);
    boolean terminal = System.console() != null;
    CommandContext surroundings =
        new CommandContext(
            out,
            err,
            Typography.of(charset),
            terminal && wantsColour(System.getenv()) ? Paint.COLOUR : Paint.NONE,
            terminal ? CommandContext.Watched.TERMINAL : CommandContext.Watched.PIPE);
    PreparedChecker checker = new PreparedChecker(new ClipCheck(), ProgramFolder.ofUser());
    if (args.length > 1 && args[0].equals("check")) {
      checker.beginEarly();
    }
    int code = new Main(surroundings, checker, checker.photos(new PhotoCheck())).run(args);
    out.flush();
    err.flush();
    System.exit(code);
  }

  /** The program as it is shipped, in surroundings of choice. */
  public static Main standard(CommandContext surroundings) {
    return new Main(surroundings, new ClipCheck());
  }

  /** Runs one command line and gives its exit code. */
  public int run(String... args) {
    CommandLine line = commands(List.of(args));
    line.setOut(surroundings.out());
    line.setErr(surroundings.err());
    Ansi ansi = surroundings.paint() == Paint.COLOUR ? Ansi.ON : Ansi.OFF;
    line.setColorScheme(CommandLine.Help.defaultColorScheme(ansi));
    // A name like @clip.mp4 is a file, not a list of arguments.
    line.setExpandAtFiles(false);
    line.setParameterExceptionHandler((e, unused) -> usage(e));
    line.setExecutionExceptionHandler((e, unused, parsed) -> failure(e));
    int code = line.execute(args);
    if (surroundings.out().checkError()) {
      surroundings.complain(Words.say("output.failed"));
      return ExitCode.USAGE.number();
    }
    return code;
  }

  /** The commands with their options and help. */
  CommandLine commands() {
    return commands(List.of());
  }

  /**
   * The commands, or the one alone that the first word names: to read the options of all of them
   * takes longer than to read a clip's first second.
   */
  private CommandLine commands(List<String> words) {
    CommandLine line = new CommandLine(new ShinlineCommand());
    Map<String, Supplier<Object>> all = byName();
    Optional<Supplier<Object>> named = words.stream().findFirst().map(all::get);
    named.map(List::of).orElseGet(() -> List.copyOf(all.values())).stream()
        .map(Supplier::get)
        .forEach(line::addSubcommand);
    OptionValues.register(line);
    line.setResourceBundle(Words.bundle());
    return line;
  }

  private Map<String, Supplier<Object>> byName() {
    Map<String, Supplier<Object>> all = new LinkedHashMap<>();
    all.put("check", () -> new CheckCommand(surroundings, checker));
    all.put("photo", () -> new PhotoCommand(surroundings, photos));
    all.put("session", () -> new SessionCommand(surroundings, checker, clock()));
    all.put("demo", () -> new DemoCommand(surroundings, checker, clock(), PageOpening.onDesktop()));
    all.put("compare", () -> new CompareCommand(surroundings));
    all.put("accuracy", () -> new AccuracyCommand(surroundings, checker));
    all.put("calibrate", () -> new CalibrateCommand(surroundings, checker));
    all.put("record", () -> RecordCommand.line(surroundings, clock(), Question.atTerminal()));
    all.put("advise", () -> new AdviseCommand(surroundings, clock()));
    all.put("progress", () -> new ProgressCommand(surroundings, clock()));
    all.put("ladder", () -> new LadderCommand(surroundings));
    all.put(
        "doctor", () -> new DoctorCommand(surroundings, new LibraryPlace(ProgramFolder.ofUser())));
    all.put("tidy", () -> new TidyCommand(surroundings, ProgramFolder.ofUser()));
    return all;
  }

  private static Clock clock() {
    return Clock.systemDefaultZone();
  }

  private int usage(CommandLine.ParameterException e) {
    surroundings.complain(String.valueOf(e.getMessage()));
    surroundings
        .err()
        .println(
            Words.say("command.see-help", e.getCommandLine().getCommandSpec().qualifiedName()));
    return ExitCode.USAGE.number();
  }

  /** The one place where exceptions become words. */
  private int failure(Exception e) {
    if (e instanceof CoachException c) {
      surroundings.complain(String.valueOf(c.getMessage()));
      return c.exitCode().number();
    }
    if (e instanceof CommandLine.ParameterException p) {
      return usage(p);
    }
    surroundings.fault("", e);
    return ExitCode.INTERNAL.number();
  }

  static boolean wantsColour(Map<String, String> environment) {
    String noColour = environment.getOrDefault("NO_COLOR", "");
    return noColour.isEmpty() && !"dumb".equals(environment.get("TERM"));
  }

  private static Charset terminalCharset() {
    // The first is set by newer Javas and by the start script, the second by Java 17 on a terminal.
    return Stream.of("stdout.encoding", "sun.stdout.encoding", "native.encoding")
        .map(System::getProperty)
        .flatMap(Stream::ofNullable)
        .filter(Main::known)
        .findFirst()
        .map(Charset::forName)
        .orElse(Charset.defaultCharset());
  }

  private static boolean known(@Nullable String charset) {
    try {
      return charset != null && Charset.isSupported(charset);
    } catch (java.nio.charset.IllegalCharsetNameException e) {
      return false;
    }
  }

  private static PrintWriter writer(FileDescriptor stream, Charset charset) {
    return new PrintWriter(
        new OutputStreamWriter(new FileOutputStream(stream), charset), /* autoFlush= */ false);
  }
}
