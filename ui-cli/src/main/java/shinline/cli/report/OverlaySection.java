package shinline.cli.report;

import java.util.ArrayList;
import java.util.List;
import shinline.cli.words.Words;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.result.SetResult;

/** All reps laid over one another at their bottoms: whether the last is still like the first. */
final class OverlaySection {
  private final Markup page;
  private final SetResult set;
  private final SeriesTable series;

  OverlaySection(Markup page, SetResult set) {
    this.page = page;
    this.set = set;
    series = set.series();
  }

  void write() {
    List<Curve> curves = Curve.of(series, set.target());
    if (curves.isEmpty() || set.reps().size() < 2) {
      return;
    }
    page.open("section", "aria-labelledby", "overlay");
    page.leaf("h2", Words.say("report.overlay"), "id", "overlay");
    page.open("p", "class", "note key");
    swatch("first", Words.say("reps.one", 1));
    if (set.reps().size() > 2) {
      swatch("between", Words.say("report.overlay.between"));
    }
    swatch("last", Words.say("reps.one", set.reps().get(set.reps().size() - 1).rep()));
    page.text(Words.say("report.overlay.how"));
    page.end();
    page.open("div", "class", "overlays");
    curves.forEach(this::panel);
    page.close().end();
  }

  private void swatch(String style, String name) {
    page.open("svg", "class", "swatch", "aria-hidden", "true");
    page.empty("line", "class", style, "x1", "0", "x2", "100%", "y1", "50%", "y2", "50%");
    page.close();
    page.text(name + " ");
  }

  private void panel(Curve curve) {
    List<RepResult> reps = set.reps();
    double before = reps.stream().mapToDouble(r -> r.bottomS() - r.startS()).max().orElse(1);
    double after = reps.stream().mapToDouble(r -> r.endS() - r.bottomS()).max().orElse(1);
    Axis time = new Axis(-before, after);
    Axis values = values(curve);
    page.open("div", "class", "panel");
    page.leaf("h3", curve.name());
    PlotFrame frame = new PlotFrame(page, time, values);
    frame.scale(curve.unit());
    page.open(
        "svg",
        "class",
        "plot",
        "role",
        "img",
        "aria-label",
        Words.say("report.overlay.spoken", curve.name()));
    frame.grid(curve.unit());
    frame.upright(0);
    for (int i = 1; i < reps.size() - 1; i++) {
      frame.curve("between", points(curve, reps.get(i)));
    }
    frame.curve("first", points(curve, reps.get(0)));
    frame.curve("last", points(curve, reps.get(reps.size() - 1)));
    page.close();
    page.leaf("span", "s", "aria-hidden", "true", "class", "corner");
    page.open("svg", "class", "names", "aria-hidden", "true");
    for (double tick : time.ticks()) {
      page.leaf(
          "text",
          Figure.number(tick, tick == Math.rint(tick) ? 0 : 1),
          "x",
          time.across(tick),
          "y",
          "75%");
    }
    page.close().end();
  }

  private List<PlotFrame.Point> points(Curve curve, RepResult rep) {
    List<PlotFrame.Point> points = new ArrayList<>();
    for (int row = 0; row < series.rows(); row++) {
      double t = series.timeS(row);
      if (t >= rep.startS() && t <= rep.endS()) {
        points.add(new PlotFrame.Point(t - rep.bottomS(), curve.at(series, row)));
      }
    }
    return points;
  }

  private Axis values(Curve curve) {
    double min = Double.POSITIVE_INFINITY;
    double max = Double.NEGATIVE_INFINITY;
    for (RepResult rep : set.reps()) {
      for (PlotFrame.Point point : points(curve, rep)) {
        min = Math.min(min, point.y().orElse(min));
        max = Math.max(max, point.y().orElse(max));
      }
    }
    return min <= max
        ? Axis.around(min, max, curve.unit() == MeasureUnit.DEGREES ? 15 : 10)
        : new Axis(0, 1);
  }
}
