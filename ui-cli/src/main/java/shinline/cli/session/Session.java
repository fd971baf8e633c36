package shinline.cli.session;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import shinline.cli.check.ClipChecker;
import shinline.cli.csv.DecimalSign;
import shinline.cli.file.OutputFiles;
import shinline.cli.finding.ClipDigests;
import shinline.cli.finding.ClipFindings;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.AthleteName;
import shinline.cli.record.RecordStore;
import shinline.cli.sheet.SessionSheet;
import shinline.metrics.ladder.Ladder;

/** A whole session: once over the folder, or for as long as clips arrive. */
public final class Session {
  private final SessionFolder folder;
  private final Optional<Path> sheet;
  private final Setting setting;
  private final ClipDigests digests = new ClipDigests();

  /**
   * What a session works with.
   *
   * @param version of the program: another measures anew
   * @param ladderFile where the ladder was read from; empty for the shipped one
   */
  public record Setting(
      ClipChecker checker,
      String version,
      RecordStore store,
      Ladder ladder,
      Optional<Path> ladderFile,
      DecimalSign decimal,
      Clock clock,
      SessionListener listener) {}

  public Session(SessionFolder folder, Optional<Path> sheet, Setting setting) {
    this.folder = folder;
    this.sheet = sheet;
    this.setting = setting;
  }

  /** Once over all clips; gives the worst that happened. */
  public ExitCode once() {
    SessionSheet read = sheet.map(SessionSheet::read).orElseGet(SessionSheet::none);
    List<Path> clips = folder.clips();
    try (OutputFiles files = new OutputFiles(inputs(clips))) {
      return run(files, setting.listener()).pass(read, clips, SessionRun.Missing.WRONG);
    }
  }

  /**
   * Makes the pages again as if an athlete had not been there: nothing is measured, nothing
   * recorded, and a clip that only that athlete's rows name is left out.
   */
  void without(AthleteName athlete) {
    SessionSheet read = sheet.map(SessionSheet::read).orElseGet(SessionSheet::none);
    SessionSheet others = read.without(athlete);
    List<Path> all = folder.clips();
    List<Path> clips = new ArrayList<>(all);
    clips.removeAll(named(all, read));
    clips.addAll(named(all, others));
    try (OutputFiles files = new OutputFiles(inputs(all))) {
      run(files, setting.listener()).show(others, clips);
    }
  }

  private static Set<Path> named(List<Path> clips, SessionSheet sheet) {
    return sheet.sets().stream()
        .flatMap(set -> set.clip().stream())
        .flatMap(name -> SessionFolder.find(clips, name).stream())
        .collect(Collectors.toCollection(LinkedHashSet::new));
  }

  /**
   * Measures each clip once it is whole, until told to end.
   *
   * @param again waits for the next look; false ends
   */
  public ExitCode watch(BooleanSupplier again) {
    ArrivingClips arriving = new ArrivingClips(folder);
    SessionListener listener = new OnceListener(setting.listener());
    Map<Path, String> done = new HashMap<>();
    ExitCode worst = ExitCode.MEASURED;
    boolean first = true;
    do {
      List<Path> whole = arriving.look();
      Map<Path, String> now = new HashMap<>();
      whole.forEach(c -> now.put(c, ArrivingClips.state(c)));
      sheet.ifPresent(s -> now.put(s, ArrivingClips.state(s)));
      if (!first && now.equals(done)) {
        continue;
      }
      first = false;
      try (OutputFiles files = new OutputFiles(inputs(whole))) {
        SessionSheet read = sheet.map(SessionSheet::read).orElseGet(SessionSheet::none);
        worst = run(files, listener).pass(read, whole, SessionRun.Missing.STILL_TO_COME);
        done.clear();
        done.putAll(now);
      } catch (CoachException e) {
        // A sheet that is being saved is whole at the next look.
        listener.complain(String.valueOf(e.getMessage()));
        done.clear();
        done.putAll(now);
        worst = worst.worse(e.exitCode());
      }
    } while (again.getAsBoolean());
    return worst;
  }

  private List<Path> inputs(List<Path> clips) {
    List<Path> inputs = new ArrayList<>(clips);
    sheet.ifPresent(inputs::add);
    inputs.add(setting.store().folder().lines());
    return inputs;
  }

  private SessionStart start() {
    return new SessionStart(
        folder.path(),
        sheet,
        setting.ladderFile(),
        setting.decimal(),
        setting.version(),
        LocalDate.now(setting.clock()));
  }

  private SessionRun run(OutputFiles files, SessionListener listener) {
    return new SessionRun(
        folder,
        new ClipFindings(
            setting.checker(),
            setting.version(),
            folder.output(),
            files,
            digests,
            setting.store().folder().origin()),
        setting.store(),
        setting.ladder(),
        new SessionPages(folder.output(), files, start()),
        setting.clock(),
        listener);
  }
}
