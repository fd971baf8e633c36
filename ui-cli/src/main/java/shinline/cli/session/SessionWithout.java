package shinline.cli.session;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.cli.check.ClipChecker;
import shinline.cli.ladder.LadderFile;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.Progress;
import shinline.cli.record.AthleteName;
import shinline.cli.record.RecordStore;
import shinline.metrics.ladder.Ladder;

/**
 * Makes the pages of sessions again without an athlete who was removed: from what was found before
 * and the record, as of the session's own day. Nothing is measured and nothing recorded.
 */
public final class SessionWithout {
  private static final ClipChecker MEASURES_NOTHING =
      (clip, options, progress) -> {
        throw new IllegalStateException("nothing is measured for pages made again");
      };

  private final AthleteName athlete;
  private final RecordStore store;
  private final String version;
  private final ZoneId zone;

  public SessionWithout(AthleteName athlete, RecordStore store, String version, ZoneId zone) {
    this.athlete = athlete;
    this.store = store;
    this.version = version;
    this.zone = zone;
  }

  /** What became of the pages of sessions. */
  public record Made(List<Path> again, List<Path> left) {}

  /**
   * @param deleted files of the athlete that went
   */
  public Made again(List<Path> deleted) {
    List<Path> again = new ArrayList<>();
    List<Path> left = new ArrayList<>();
    for (Path page : deleted) {
      if (String.valueOf(page.getFileName()).equals(SessionPages.TEAM)) {
        (isMadeAgain(page) ? again : left).add(page);
      }
    }
    return new Made(again, left);
  }

  private boolean isMadeAgain(Path page) {
    Optional<SessionStart> start =
        SessionStart.of(page.resolveSibling(""), version)
            .filter(s -> Files.isDirectory(s.folder()))
            .filter(s -> s.sheet().isPresent());
    try {
      start.ifPresent(s -> session(s).without(athlete));
      return start.isPresent();
    } catch (CoachException unreadable) {
      // A sheet or ladder that has gone: the next session makes them.
      return false;
    }
  }

  private Session session(SessionStart start) {
    Ladder ladder =
        start
            .ladder()
            .map(
                file ->
                    LadderFile.read(file)
                        .fold(
                            l -> l,
                            refused -> {
                              throw CoachException.usage(String.valueOf(file));
                            }))
            .orElseGet(LadderFile::shipped);
    return new Session(
        new SessionFolder(start.folder()),
        start.sheet(),
        new Session.Setting(
            MEASURES_NOTHING,
            version,
            store,
            ladder,
            start.ladder(),
            start.decimal(),
            Clock.fixed(start.day().atStartOfDay(zone).toInstant(), zone),
            new Quiet()));
  }

  /** What is wrong with rows and clips was said when they were measured. */
  private static final class Quiet implements SessionListener {
    @Override
    public void say(String line) {}

    @Override
    public void complain(String line) {}

    @Override
    public void fault(String clip, Throwable cause) {}

    @Override
    public Progress measuring(String label) {
      return Progress.silent();
    }
  }
}
