package shinline.cli.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import shinline.cli.context.CommandContext;
import shinline.cli.doctor.Doctor;
import shinline.cli.doctor.Health;
import shinline.cli.doctor.Health.State;
import shinline.cli.outcome.ExitCode;
import shinline.cli.place.LibraryPlace;
import shinline.cli.record.RecordFolder;
import shinline.cli.words.PrintedName;
import shinline.cli.words.Words;

/** {@code shinline doctor}: says whether this computer can do the job, and how fast. */
@Command(
    name = "doctor",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class DoctorCommand implements Callable<Integer> {
  private static final int WIDEST_NAME = 18;

  @Option(
      names = "--record",
      paramLabel = "FOLDER",
      descriptionKey = "shinline.shared.record-folder")
  private @Nullable Path record;

  private final CommandContext context;
  private final LibraryPlace place;

  public DoctorCommand(CommandContext context, LibraryPlace place) {
    this.context = context;
    this.place = place;
  }

  @Override
  public Integer call() {
    RecordFolder folder =
        RecordFolder.choose(
            Optional.ofNullable(record),
            System.getenv(),
            Path.of(System.getProperty("user.home", ".")));
    List<Health> found =
        new Doctor(
                new Doctor.Surroundings(
                    Path.of(System.getProperty("java.io.tmpdir", "")),
                    place,
                    folder.path(),
                    context.signs()))
            .examine();
    found.forEach(h -> context.out().println(line(h)));
    boolean fit = found.stream().noneMatch(h -> h.state() == State.BAD);
    context.out().println();
    context.out().println(Words.say(fit ? "doctor.fit" : "doctor.unfit"));
    context.out().flush();
    return (fit ? ExitCode.MEASURED : ExitCode.USAGE).number();
  }

  private static String line(Health health) {
    String name = Words.of(health.part(), "name");
    String blanks = " ".repeat(Math.max(1, WIDEST_NAME - name.length()));
    return Words.of(health.state(), "mark")
        + "  "
        + name
        + blanks
        + PrintedName.inLines(health.words());
  }
}
