package shinline.cli.demo;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import shinline.cli.check.ClipChecker;
import shinline.cli.csv.DecimalSign;
import shinline.cli.file.OutputFiles;
import shinline.cli.ladder.LadderFile;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.progress.ProgressPages;
import shinline.cli.record.RecordFolder;
import shinline.cli.record.RecordStore;
import shinline.cli.session.Session;
import shinline.cli.session.SessionFolder;
import shinline.cli.session.SessionListener;
import shinline.cli.words.Words;

/**
 * A squad that does not exist, with six weeks on record and the clips of an evening, so that every
 * page can be looked at before the first athlete is filmed. Each page says that it is invented.
 */
public final class Demo {
  private static final LocalTime AFTER_TRAINING = LocalTime.of(19, 0);

  private final Path folder;
  private final LocalDate lastDay;
  private final Clock clock;
  private final ClipChecker checker;
  private final String version;
  private final SessionListener listener;

  /**
   * @param lastDay the day the squad trained last
   * @param clock that the session goes by once it is turned to the last day
   */
  public Demo(
      Path folder,
      LocalDate lastDay,
      Clock clock,
      ClipChecker checker,
      String version,
      SessionListener listener) {
    this.folder = folder;
    this.lastDay = lastDay;
    this.clock = clock;
    this.checker = checker;
    this.version = version;
    this.listener = listener;
  }

  /** The coach's page. */
  public Path teamPage() {
    return evening().resolve(SessionFolder.OUTPUT).resolve("team.html");
  }

  /** Where the invented record is. */
  public Path record() {
    return folder.resolve("record");
  }

  private Path evening() {
    return folder.resolve(Squad.VENUE);
  }

  /**
   * Builds it anew; gives the worst that happened in the session.
   *
   * @throws CoachException when the folder holds anything else
   */
  public ExitCode build() {
    DemoFolder own = new DemoFolder(folder);
    own.take();
    try {
      RecordFolder record = new RecordFolder(record());
      markAsInvented(record);
      ZoneId zone = clock.getZone();
      new PastWeeks(record, lastDay, zone).write();
      LastDay evening = new LastDay(evening(), lastDay, zone);
      evening.write();
      RecordStore store = new RecordStore(record, onLastDay());
      ExitCode worst = session(evening, store);
      try (OutputFiles files = new OutputFiles(List.of(record.lines()))) {
        ProgressPages pages = new ProgressPages(store, files, LadderFile.shipped().maximum());
        Squad.all().forEach(s -> pages.write(s.athlete()));
      }
      return worst;
    } finally {
      own.note();
    }
  }

  private ExitCode session(LastDay evening, RecordStore store) {
    return new Session(
            SessionFolder.of(evening.folder()),
            Optional.of(evening.sheet()),
            new Session.Setting(
                checker,
                version,
                store,
                LadderFile.shipped(),
                Optional.empty(),
                DecimalSign.POINT,
                onLastDay(),
                listener))
        .once();
  }

  /** Goes on ticking, so that what is left can be told, on the day asked for. */
  private Clock onLastDay() {
    return Clock.offset(
        clock,
        Duration.between(
            clock.instant(), lastDay.atTime(AFTER_TRAINING).atZone(clock.getZone()).toInstant()));
  }

  private static void markAsInvented(RecordFolder record) {
    try {
      Files.createDirectories(record.path());
      Files.writeString(record.inventedMark(), Words.say("invented.page") + "\n");
    } catch (IOException e) {
      throw CoachException.usage(
          Words.say("demo.unwritable", record.path(), String.valueOf(e.getMessage())));
    }
  }
}
