package shinline.cli.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import shinline.cli.report.Axis;
import shinline.cli.report.Figure;
import shinline.cli.report.Markup;
import shinline.cli.report.PlotFrame;
import shinline.cli.words.Words;
import shinline.metrics.progress.Followed;
import shinline.metrics.progress.LegProgress;
import shinline.metrics.progress.SessionValue;
import shinline.metrics.progress.Stretch;

/**
 * One measure of one leg over the weeks: a point a session, joined within a stretch, and around the
 * first session of each stretch the band that a real change leaves.
 */
final class WeekPlot {
  /** Days of room before the first and after the last session. */
  private static final double ROOM_DAYS = 3;

  private final Markup page;
  private final ProgressWords words;
  private final Followed followed;
  private final Axis time;
  private final Axis values;

  private WeekPlot(Markup page, ProgressWords words, Followed followed, Axis time, Axis values) {
    this.page = page;
    this.words = words;
    this.followed = followed;
    this.time = time;
    this.values = values;
  }

  /** Both legs beside each other on the same axes. */
  static void write(
      Markup page, ProgressWords words, Followed followed, List<LegProgress> legs, Axis time) {
    WeekPlot plot = new WeekPlot(page, words, followed, time, values(followed, legs));
    page.open("div", "class", "measure");
    page.open("h3").text(words.name(followed));
    page.leaf("small", " " + Words.of(followed, "meaning")).close();
    page.open("div", "class", "legs");
    legs.forEach(plot::leg);
    page.close().end();
  }

  /** From the first to the last day of any session. */
  static Axis time(List<LegProgress> legs) {
    double min = Double.POSITIVE_INFINITY;
    double max = Double.NEGATIVE_INFINITY;
    for (LegProgress leg : legs) {
      for (Followed followed : Followed.values()) {
        for (Stretch stretch : leg.stretches(followed)) {
          min = Math.min(min, day(stretch.first()));
          max = Math.max(max, day(stretch.last()));
        }
      }
    }
    return new Axis(min - ROOM_DAYS, max + ROOM_DAYS);
  }

  private static double day(SessionValue session) {
    return session.date().toEpochDay();
  }

  private static Axis values(Followed followed, List<LegProgress> legs) {
    double min = Double.POSITIVE_INFINITY;
    double max = Double.NEGATIVE_INFINITY;
    for (LegProgress leg : legs) {
      for (Stretch stretch : leg.stretches(followed)) {
        double limit = stretch.realChange().orElse(0);
        min = Math.min(min, stretch.first().value() - limit);
        max = Math.max(max, stretch.first().value() + limit);
        for (SessionValue session : stretch.values()) {
          min = Math.min(min, session.value());
          max = Math.max(max, session.value());
        }
      }
    }
    return Axis.around(min, max, least(followed));
  }

  /** Flatter than this a plot would make noise look like a mountain. */
  private static double least(Followed followed) {
    return switch (followed) {
      case SHIN, DEPTH, TRUNK -> 10;
      case LOWERING, HOLD -> 1;
      case DRIVE_SPEED, BAR_SPEED -> 0.2;
      case LOAD, MAXIMUM -> 5;
    };
  }

  private void leg(LegProgress leg) {
    List<Stretch> stretches = leg.stretches(followed);
    page.open("div", "class", "leg");
    page.leaf("h4", ProgressWords.leg(leg.leg()));
    if (stretches.isEmpty()) {
      page.leaf("p", Words.say("progress.not-on-record"), "class", "note");
      page.end();
      return;
    }
    Stretch latest = stretches.get(stretches.size() - 1);
    page.open("div", "class", "panel");
    scale();
    page.open(
        "svg",
        "class",
        "plot",
        "role",
        "img",
        "aria-label",
        words.name(followed) + ": " + words.change(leg, latest));
    PlotFrame frame = new PlotFrame(page, time, values);
    lines();
    for (Stretch stretch : stretches) {
      band(frame, stretch);
    }
    for (Stretch stretch : stretches) {
      if (stretch != stretches.get(0)) {
        String at = time.across(day(stretch.first()) - ROOM_DAYS / 2);
        page.empty("line", "class", "turn", "x1", at, "x2", at, "y1", "0", "y2", "100%");
      }
      frame.curve("line", points(stretch));
      stretch.values().forEach(this::point);
    }
    page.close();
    dates();
    page.close();
    page.leaf("p", words.change(leg, latest), "class", "said");
    page.end();
  }

  private void band(PlotFrame frame, Stretch stretch) {
    OptionalDouble limit = stretch.realChange();
    if (stretch.values().size() < 2 || limit.isEmpty() || limit.getAsDouble() == 0) {
      return;
    }
    double from = stretch.first().value();
    frame.area(
        "band",
        day(stretch.first()),
        day(stretch.last()),
        from - limit.getAsDouble(),
        from + limit.getAsDouble());
  }

  private static List<PlotFrame.Point> points(Stretch stretch) {
    return stretch.values().stream()
        .map(v -> new PlotFrame.Point(day(v), OptionalDouble.of(v.value())))
        .toList();
  }

  private void point(SessionValue session) {
    page.open(
        "circle",
        "class",
        "session",
        "cx",
        time.across(day(session)),
        "cy",
        values.down(session.value()),
        "r",
        "4.5");
    page.leaf(
        "title",
        Words.say("progress.point", session.date(), words.quantity(followed, session.value())));
    page.close();
  }

  private void scale() {
    page.open("svg", "class", "scale", "aria-hidden", "true");
    for (double tick : values.ticks()) {
      page.leaf(
          "text",
          label(tick) + words.unit(followed).replace(' ', '\u00a0'),
          "x",
          "100%",
          "y",
          values.down(tick),
          "dy",
          "0.32em");
    }
    page.close();
  }

  private String label(double tick) {
    List<Double> ticks = values.ticks();
    double step = ticks.size() > 1 ? ticks.get(1) - ticks.get(0) : 1;
    return Figure.number(tick, step >= 1 - 1e-9 ? 0 : step >= 0.1 - 1e-9 ? 1 : 2);
  }

  private void lines() {
    for (double tick : values.ticks()) {
      String at = values.down(tick);
      page.empty("line", "class", "grid", "x1", "0", "x2", "100%", "y1", at, "y2", at);
    }
  }

  /** First and last day, and those between that have room. */
  private void dates() {
    page.open("span").close();
    page.open("svg", "class", "names days", "aria-hidden", "true");
    for (LocalDate day : shownDays()) {
      page.leaf(
          "text",
          String.format(Locale.ROOT, "%02d-%02d", day.getMonthValue(), day.getDayOfMonth()),
          "x",
          time.across(day.toEpochDay()),
          "y",
          "1.1em");
    }
    page.close();
  }

  private List<LocalDate> shownDays() {
    LocalDate first = LocalDate.ofEpochDay(Math.round(time.min() + ROOM_DAYS));
    LocalDate last = LocalDate.ofEpochDay(Math.round(time.max() - ROOM_DAYS));
    long weeks = Math.max(1, (last.toEpochDay() - first.toEpochDay()) / 7);
    // Four marks have room on a phone.
    long step = (weeks + 2) / 3 * 7;
    List<LocalDate> days = new ArrayList<>();
    for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(step)) {
      days.add(day);
    }
    return days;
  }
}
