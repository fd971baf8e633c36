package shinline.cli.report;

import java.io.IOException;
import java.io.Writer;
import java.util.Optional;
import shinline.cli.outcome.ClipReport;
import shinline.cli.picture.RepPictures;
import shinline.cli.record.Origin;
import shinline.cli.text.RefusalWords;
import shinline.cli.text.Units;
import shinline.cli.words.PrintedName;
import shinline.cli.words.Words;

/**
 * One clip's page: a single HTML file that asks for nothing. Its content policy allows pictures
 * that are part of the page and exactly one style sheet and one script, by their hashes.
 */
public final class ReportPage {
  private static final String STYLE = PageParts.resource(ReportPage.class, "report.css");
  private static final String SCRIPT = PageParts.resource(ReportPage.class, "report.js");

  private final Units units;
  private final Origin origin;

  /**
   * @param units shown first; the reader can switch
   */
  public ReportPage(Units units) {
    this(units, Origin.TRAINING);
  }

  /**
   * @param units shown first; the reader can switch
   * @param origin of the record it belongs to
   */
  public ReportPage(Units units, Origin origin) {
    this.units = units;
    this.origin = origin;
  }

  /** Writes the page of a measured set. */
  public void write(ClipReport.Measured report, RepPictures pictures, Writer out)
      throws IOException {
    Markup page = new Markup();
    start(page, PrintedName.of(report.clip().fileName()));
    VerdictSection.write(page, report);
    new PictureSection(page, pictures).write(report.set());
    new TableSection(page, report.set()).write(report.set());
    new BarSection(page, report.set()).write();
    new PlotSection(page, report.set()).write();
    new OverlaySection(page, report.set()).write();
    TrustSection.write(page, report);
    finish(page, report.clip().sha256());
    out.write(page.done());
  }

  /** Writes the page of a clip in which no set could be measured: why, and what to do. */
  public void write(ClipReport.NotMeasured report, Writer out) throws IOException {
    Markup page = new Markup();
    start(page, PrintedName.of(report.clip().fileName()));
    page.open("header");
    page.leaf("p", PrintedName.of(report.clip().fileName()), "class", "origin");
    page.leaf(
        "h1",
        Words.say("text.not-measured", VerdictSection.sentence(RefusalWords.reason(report.why()))));
    page.end();
    page.open("section", "aria-labelledby", "what-to-do");
    page.leaf("h2", Words.say("report.to-do"), "id", "what-to-do");
    page.leaf("p", VerdictSection.sentence(RefusalWords.advice(report.why())), "class", "lead");
    report.warnings().forEach(w -> page.leaf("p", VerdictSection.sentence(w)));
    page.leaf("p", TrustSection.clip(report.clip()), "class", "note");
    page.end();
    TrustSection.cautions(page);
    finish(page, report.clip().sha256());
    out.write(page.done());
  }

  private void start(Markup page, String fileName) {
    PageParts.head(
        page, Words.say("report.title", fileName), STYLE, Optional.of(SCRIPT), Optional.empty());
    page.open("body");
    UnitButtons.write(page, units);
    page.open("main").line();
    InventedMark.write(page, origin);
  }

  private static void finish(Markup page, String sha256) {
    page.open("footer");
    page.leaf("p", Words.say("report.footer", sha256.substring(0, Math.min(12, sha256.length()))));
    page.close().end();
    page.shipped("script", SCRIPT).close().end();
  }
}
