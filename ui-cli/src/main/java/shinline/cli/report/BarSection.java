package shinline.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import shinline.cli.text.Headline;
import shinline.cli.words.Words;
import shinline.metrics.geometry.Point;
import shinline.metrics.result.BarReading;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;

/** The bar on the back: how fast it rose in each drive, and on what way. */
final class BarSection {
  /** The plot is this much wider than high, so that a centimetre is as long across as up. */
  private static final double WIDTH_OF_HEIGHT = 0.6;

  private final Markup page;
  private final Map<Integer, BarReading> bars = new LinkedHashMap<>();

  BarSection(Markup page, SetResult set) {
    this.page = page;
    for (RepResult rep : set.reps()) {
      rep.drive().bar().ifPresent(bar -> bars.put(rep.rep(), bar));
    }
  }

  /** Writes nothing where no bar was followed through a drive. */
  void write() {
    if (bars.values().stream().allMatch(b -> b.meanSpeed().measured().isEmpty())) {
      return;
    }
    page.open("section", "class", "bar", "aria-labelledby", "bar");
    page.leaf("h2", Words.say("report.bar"), "id", "bar");
    page.leaf("p", Words.say("report.bar.note"), "class", "note");
    page.open("div", "class", "bar-parts").line();
    table();
    way();
    page.end();
    missing();
    page.end();
  }

  private void table() {
    page.open("table", "role", "table", "aria-labelledby", "bar");
    page.open("thead", "role", "rowgroup").open("tr", "role", "row");
    page.leaf("th", Words.say("table.rep"), "scope", "col", "role", "columnheader");
    for (BarColumn column : BarColumn.values()) {
      page.open("th", "scope", "col", "role", "columnheader").text(column.heading() + " ");
      page.open("small");
      Figure.unit(page, column.unit());
      page.close().close();
    }
    page.close().close().open("tbody", "role", "rowgroup");
    bars.forEach(this::row);
    page.close().end();
  }

  private void row(int rep, BarReading bar) {
    page.open("tr", "role", "row");
    Figure.rowHeading(page, rep);
    for (BarColumn column : BarColumn.values()) {
      page.open("td", "role", "cell", "class", "plain");
      Figure.label(page, column.heading(), column.unit());
      column
          .of(bar)
          .fold(
              measured -> {
                Figure.reading(page, measured, column.unit());
                return page;
              },
              gap -> page.leaf("span", "–", "title", Words.of(gap.gap(), "reason")));
      page.close();
    }
    page.close();
  }

  /** The ways of all drives over one another, each from its bottom. */
  private void way() {
    List<List<Point>> ways =
        bars.values().stream().map(BarReading::pathCm).filter(w -> w.size() > 1).toList();
    if (ways.isEmpty()) {
      return;
    }
    double top = ways.stream().flatMap(List::stream).mapToDouble(Point::y).max().orElse(1);
    double least = ways.stream().flatMap(List::stream).mapToDouble(Point::x).min().orElse(0);
    double most = ways.stream().flatMap(List::stream).mapToDouble(Point::x).max().orElse(0);
    // Whichever is longer decides, so that both scales stay the same.
    Axis across = Axis.around(least, most, WIDTH_OF_HEIGHT * Math.max(top, 1));
    Axis up = Axis.around(0, top, (across.max() - across.min()) / WIDTH_OF_HEIGHT / 1.16);
    page.open("div", "class", "panel way");
    page.leaf("h3", Words.say("report.bar.way"));
    PlotFrame frame = new PlotFrame(page, across, up);
    frame.scale(MeasureUnit.CENTIMETRES);
    page.open("svg", "class", "plot", "role", "img", "aria-label", Words.say("report.bar.spoken"));
    frame.grid(MeasureUnit.CENTIMETRES);
    frame.upright(0);
    for (int i = 0; i < ways.size(); i++) {
      String style = i == 0 ? "first" : i == ways.size() - 1 ? "last" : "between";
      frame.curve(style, points(ways.get(i)));
    }
    page.close();
    page.leaf("p", Words.say("report.bar.key"), "class", "note");
    page.end();
  }

  private static List<PlotFrame.Point> points(List<Point> way) {
    List<PlotFrame.Point> points = new ArrayList<>();
    way.forEach(p -> points.add(new PlotFrame.Point(p.x(), OptionalDouble.of(p.y()))));
    return points;
  }

  private void missing() {
    Map<String, List<Integer>> gaps = new LinkedHashMap<>();
    bars.forEach(
        (rep, bar) -> {
          if (bar.meanSpeed() instanceof Reading.NotMeasured gap) {
            gaps.computeIfAbsent(Words.of(gap.gap(), "reason"), k -> new ArrayList<>()).add(rep);
          }
        });
    gaps.forEach(
        (why, reps) ->
            page.leaf(
                "p",
                VerdictSection.sentence(Words.say("report.trust.gap", why, Headline.reps(reps))),
                "class",
                "note"));
  }
}
