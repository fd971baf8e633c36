package shinline.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import shinline.cli.words.Words;
import shinline.metrics.judgement.Asked;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.result.SetResult;

/** The set over time: phases shaded, the asked-for band at each bottom, one curve a plot. */
final class PlotSection {
  /** Seconds shown before the first and after the last rep. */
  private static final double AROUND_S = 0.6;

  /** More points than a wide screen has dots only make the page heavy. */
  private static final int MOST_POINTS = 1500;

  private final Markup page;
  private final SetResult set;
  private final SeriesTable series;
  private final Axis time;
  private final List<Integer> rows;

  PlotSection(Markup page, SetResult set) {
    this.page = page;
    this.set = set;
    series = set.series();
    List<RepResult> reps = set.reps();
    double from = reps.isEmpty() ? 0 : reps.get(0).startS() - AROUND_S;
    double to = reps.isEmpty() ? 1 : reps.get(reps.size() - 1).endS() + AROUND_S;
    time = new Axis(from, to);
    List<Integer> inside =
        IntStream.range(0, series.rows())
            .filter(row -> series.timeS(row) >= from && series.timeS(row) <= to)
            .boxed()
            .toList();
    int step = 1 + inside.size() / MOST_POINTS;
    rows =
        IntStream.range(0, inside.size()).filter(i -> i % step == 0).mapToObj(inside::get).toList();
  }

  void write() {
    List<Curve> curves = Curve.of(series, set.target());
    if (curves.isEmpty() || set.reps().isEmpty()) {
      return;
    }
    page.open("section", "aria-labelledby", "over-time");
    page.leaf("h2", Words.say("report.plots"), "id", "over-time");
    key();
    page.open(
        "div",
        "class",
        "plots",
        "data-not-seen",
        Words.say("report.plots.not-seen"),
        "data-at",
        Words.say("report.plots.at", "$value", "$time", "$frame"),
        "data-from",
        Figure.plain(time.min(), 3),
        "data-to",
        Figure.plain(time.max(), 3),
        "data-t",
        rows.stream().map(r -> Figure.plain(series.timeS(r), 2)).collect(Collectors.joining(" ")),
        "data-f",
        rows.stream().map(r -> Integer.toString(series.frame(r))).collect(Collectors.joining(" ")));
    repNames();
    curves.forEach(this::panel);
    seconds();
    page.close().end();
  }

  private void key() {
    page.open("p", "class", "note key");
    swatch("lowering", Words.of(Aspect.LOWERING, "noun"));
    swatch("hold", Words.of(Aspect.HOLD, "noun"));
    swatch("drive", Words.of(Aspect.DRIVE, "noun"));
    if (!Asked.of(set.target()).isEmpty()) {
      swatch("band", Words.say("report.plots.band"));
    }
    page.leaf("span", Words.say("report.plots.point"), "class", "live");
    page.end();
  }

  private void swatch(String style, String name) {
    page.open("svg", "class", "swatch", "aria-hidden", "true");
    page.empty("rect", "class", style, "width", "100%", "height", "100%");
    page.close();
    page.text(name + " ");
  }

  private void repNames() {
    page.open("div", "class", "panel reps", "aria-hidden", "true");
    page.open("span").close();
    page.open("svg", "class", "names");
    boolean crowded = set.reps().size() > 6;
    for (RepResult rep : set.reps()) {
      page.open(
          "text",
          "x",
          time.across((rep.startS() + rep.endS()) / 2),
          "y",
          "75%",
          "class",
          Mark.of(rep).styleClass());
      page.text(
          (crowded ? String.valueOf(rep.rep()) : Words.say("report.rep", rep.rep()))
              + " "
              + Mark.of(rep).sign());
      page.close();
    }
    page.close().end();
  }

  private void panel(Curve curve) {
    Axis values = values(curve);
    String id = "plot-" + curve.column().jsonName();
    page.open(
        "div",
        "class",
        "panel curve",
        "data-unit",
        Figure.symbol(curve.unit()),
        "data-v",
        rows.stream()
            .map(r -> Figure.plain(curve.at(series, r), 1))
            .map(v -> v.isEmpty() ? "-" : v)
            .collect(Collectors.joining(" ")));
    page.open("h3", "id", id).text(curve.name() + " ");
    page.leaf("small", curve.meaning()).close();
    page.leaf("output", "", "class", "live");
    PlotFrame frame = new PlotFrame(page, time, values);
    frame.scale(curve.unit());
    page.open("svg", "class", "plot", "role", "img", "aria-label", spoken(curve));
    for (RepResult rep : set.reps()) {
      double bottom = values.min();
      double top = values.max();
      frame.area("lowering", rep.startS(), rep.bottomStartS(), bottom, top);
      frame.area("hold", rep.bottomStartS(), rep.bottomEndS(), bottom, top);
      frame.area("drive", rep.bottomEndS(), rep.endS(), bottom, top);
    }
    frame.grid(curve.unit());
    curve
        .band()
        .ifPresent(
            band ->
                set.reps()
                    .forEach(
                        rep ->
                            frame.area(
                                "band",
                                rep.bottomStartS(),
                                rep.bottomEndS(),
                                band.min(),
                                band.max())));
    List<PlotFrame.Point> points = new ArrayList<>();
    for (int row : rows) {
      points.add(new PlotFrame.Point(series.timeS(row), curve.at(series, row)));
    }
    frame.curve("line", points);
    page.close().end();
  }

  /** What a screen reader says in place of the plot. */
  private String spoken(Curve curve) {
    return Words.say(
        "report.plots.spoken",
        curve.name(),
        set.reps().stream()
            .map(rep -> Words.say("report.plots.spoken.rep", rep.rep(), atBottom(curve, rep)))
            .collect(Collectors.joining(", ")));
  }

  private String atBottom(Curve curve, RepResult rep) {
    OptionalDouble value = OptionalDouble.empty();
    for (int row : rows) {
      if (series.timeS(row) <= rep.bottomS()) {
        value = curve.at(series, row);
      }
    }
    return value.isPresent()
        ? Figure.number(value.getAsDouble(), 0) + Figure.symbol(curve.unit())
        : Words.say("report.plots.not-seen");
  }

  private Axis values(Curve curve) {
    List<Double> all = new ArrayList<>();
    rows.forEach(row -> curve.at(series, row).ifPresent(all::add));
    curve
        .band()
        .ifPresent(
            band -> {
              all.add(Double.isFinite(band.min()) ? band.min() : band.max());
              all.add(Double.isFinite(band.max()) ? band.max() : band.min());
            });
    return Axis.around(
        all.stream().mapToDouble(v -> v).min().orElse(0),
        all.stream().mapToDouble(v -> v).max().orElse(1),
        curve.unit() == MeasureUnit.DEGREES ? 15 : 10);
  }

  private void seconds() {
    page.open("div", "class", "panel seconds", "aria-hidden", "true");
    page.leaf("span", "s");
    page.open("svg", "class", "names");
    for (double tick : time.ticks()) {
      page.leaf("text", Figure.number(tick, 0), "x", time.across(tick), "y", "75%");
    }
    page.close().end();
  }
}
