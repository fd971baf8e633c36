package shinline.cli.progress;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.cli.record.Origin;
import shinline.cli.report.Axis;
import shinline.cli.report.InventedMark;
import shinline.cli.report.Markup;
import shinline.cli.report.PageParts;
import shinline.cli.report.ReportPage;
import shinline.cli.text.Cautions;
import shinline.cli.words.Words;
import shinline.metrics.progress.AthleteProgress;
import shinline.metrics.progress.Fading;
import shinline.metrics.progress.Followed;
import shinline.metrics.progress.LegProgress;

/**
 * An athlete's weeks as one HTML file that asks for nothing: load, shin and depth first, then the
 * pictures, left against right, the rest, and what fades inside sets.
 */
public final class ProgressPage {
  private static final String STYLE =
      PageParts.resource(ReportPage.class, "report.css")
          + PageParts.resource(ProgressPage.class, "progress.css");

  private static final List<Followed> FIRST = List.of(Followed.LOAD, Followed.SHIN, Followed.DEPTH);

  private final AthleteWeeks weeks;
  private final Origin origin;
  private final AthleteProgress progress;
  private final ProgressWords words;
  private final Markup page = new Markup();

  /**
   * @param origin of the record
   */
  public ProgressPage(AthleteWeeks weeks, Origin origin) {
    this.weeks = weeks;
    this.origin = origin;
    progress = weeks.progress();
    words = new ProgressWords(progress.unit());
  }

  public void write(Writer out) throws IOException {
    start();
    List<Followed> seen = Stream.of(Followed.values()).filter(this::seen).toList();
    if (seen.isEmpty()) {
      page.leaf("p", Words.say("progress.nothing"), "class", "lead");
    } else {
      Axis time = WeekPlot.time(progress.legs());
      plots("at-first", Words.say("progress.first"), time, only(seen, true));
      new BottomRow(page, weeks, words).write();
      sides();
      plots("further", Words.say("progress.rest"), time, only(seen, false));
      fading();
      method();
    }
    section("care", Words.say("caution.heading"));
    items(Cautions.all());
    page.end();
    page.open("footer").leaf("p", Words.say("progress.footer")).close().end();
    page.close().end();
    out.write(page.done());
  }

  private boolean seen(Followed followed) {
    return progress.legs().stream().anyMatch(l -> !l.stretches(followed).isEmpty());
  }

  private static List<Followed> only(List<Followed> seen, boolean first) {
    return seen.stream().filter(f -> FIRST.contains(f) == first).toList();
  }

  private void start() {
    String title = Words.say("progress.title", weeks.athlete().written());
    PageParts.head(page, title, STYLE, Optional.empty(), Optional.empty());
    page.open("body").open("main").line();
    InventedMark.write(page, origin);
    page.open("header");
    page.leaf("p", Words.say("progress.origin"), "class", "origin");
    page.leaf("h1", title);
    page.end();
  }

  private void section(String id, String heading) {
    page.open("section", "class", id, "aria-labelledby", id);
    page.leaf("h2", heading, "id", id);
  }

  private void items(List<String> texts) {
    page.open("ul");
    texts.forEach(t -> page.leaf("li", t));
    page.close();
  }

  private void plots(String id, String heading, Axis time, List<Followed> shown) {
    if (shown.isEmpty()) {
      return;
    }
    section(id, heading);
    page.open("p", "class", "note key");
    page.open("svg", "class", "swatch", "aria-hidden", "true");
    page.empty("rect", "class", "band", "width", "100%", "height", "100%");
    page.close();
    page.text(Words.say("progress.band"));
    page.end();
    shown.forEach(f -> WeekPlot.write(page, words, f, progress.legs(), time));
    page.end();
  }

  private void sides() {
    section("sides", Words.say("progress.sides"));
    List<String> lines = progress.sides().stream().map(words::sides).toList();
    if (lines.isEmpty()) {
      page.leaf("p", Words.say("progress.sides.none"));
    } else {
      items(lines);
    }
    words.sidesNotes(progress).forEach(n -> page.leaf("p", n, "class", "note"));
    page.end();
  }

  private void fading() {
    section("fading", Words.say("progress.fading"));
    List<Row> rows = new ArrayList<>();
    for (LegProgress leg : progress.legs()) {
      progress.fading(leg).forEach(day -> rows.add(new Row(leg, day)));
    }
    if (rows.isEmpty()) {
      page.leaf("p", Words.say("progress.fading.none"));
      page.end();
      return;
    }
    page.open("ul", "class", "days");
    for (Row row : rows) {
      page.open("li");
      page.leaf("b", row.day().date() + ", " + ProgressWords.leg(row.leg().leg()) + ": ");
      page.text(String.join("; ", FadingWords.of(row.day())));
      page.close();
    }
    page.close();
    page.leaf("p", Words.say("progress.fading.note"), "class", "note");
    page.end();
  }

  private record Row(LegProgress leg, Fading day) {}

  private void method() {
    section("method", Words.say("progress.method.heading"));
    items(ProgressWords.method(progress));
    page.end();
  }
}
