package shinline.cli.progress;

import java.io.IOException;
import java.nio.file.Path;
import shinline.cli.file.Claim;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.TextDigest;
import shinline.cli.file.WholeFile;
import shinline.cli.outcome.CoachException;
import shinline.cli.record.AthleteName;
import shinline.cli.record.RecordStore;
import shinline.cli.record.RecordView;
import shinline.cli.record.WrittenFiles;
import shinline.cli.words.Words;
import shinline.metrics.load.OneRepMax;

/** The pages of athletes' weeks beside the record, each noted so that a removal finds it. */
public final class ProgressPages {
  private static final int DIGITS = 6;

  private final RecordStore store;
  private final OutputFiles files;
  private final OneRepMax formula;

  public ProgressPages(RecordStore store, OutputFiles files, OneRepMax formula) {
    this.store = store;
    this.files = files;
    this.formula = formula;
  }

  /** Writes an athlete's page beside the record. */
  public void write(AthleteName athlete) {
    WrittenFiles written = new WrittenFiles(store.folder());
    RecordView record = new RecordView(store.read());
    try {
      write(
          AthleteWeeks.of(
              record.of(athlete), record.measured(athlete), written.bottoms(athlete), formula),
          beside(athlete));
    } catch (IOException e) {
      throw CoachException.usage(Words.say("progress.no-pictures", String.valueOf(e.getMessage())));
    }
  }

  /** Writes a page to a place. */
  public void write(AthleteWeeks weeks, WholeFile page) {
    page.write(new ProgressPage(weeks, store.folder().origin())::write);
    if (page.isDevice()) {
      return;
    }
    try {
      new WrittenFiles(store.folder()).note(weeks.athlete(), page.path());
    } catch (IOException e) {
      throw CoachException.usage(
          Words.say("progress.not-noted", page.path(), String.valueOf(e.getMessage())));
    }
  }

  /** Where an athlete's page goes when no other place is named. */
  public WholeFile beside(AthleteName athlete) {
    Path folder = store.folder().path().resolve("pages");
    WholeFile page = files.file(folder.resolve(fileName(athlete)), Claim.OURS);
    page.makeFolder();
    return page;
  }

  /** A name any system takes; where letters had to go, two athletes still get two pages. */
  static String fileName(AthleteName name) {
    String plain = name.key().replaceAll("[^\\p{L}\\p{N}]+", "-");
    String told =
        plain.equals(name.key())
            ? plain
            : plain + "-" + TextDigest.hex(name.key()).substring(0, DIGITS);
    return told + "-progress.html";
  }
}
