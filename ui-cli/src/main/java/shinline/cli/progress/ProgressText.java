package shinline.cli.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import shinline.cli.text.Cautions;
import shinline.cli.text.Layout;
import shinline.cli.text.TextTable;
import shinline.cli.words.Words;
import shinline.metrics.progress.Asking;
import shinline.metrics.progress.Fading;
import shinline.metrics.progress.Followed;
import shinline.metrics.progress.LegProgress;
import shinline.metrics.progress.SessionValue;
import shinline.metrics.progress.Stretch;

/** An athlete's weeks for the terminal. */
public final class ProgressText {
  private static final String INDENT = "  ";

  private final AthleteWeeks weeks;
  private final Layout layout;
  private final ProgressWords words;

  public ProgressText(AthleteWeeks weeks, Layout layout) {
    this.weeks = weeks;
    this.layout = layout;
    words = new ProgressWords(weeks.progress().unit());
  }

  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    lines.add(heading(Words.say("progress.title", weeks.athlete().written())));
    for (LegProgress leg : weeks.progress().legs()) {
      lines.add("");
      lines.add(heading(ProgressWords.leg(leg.leg())));
      lines.addAll(table(leg));
    }
    lines.add("");
    lines.add(heading(Words.say("progress.changes")));
    for (Followed followed : Followed.values()) {
      List<String> changes =
          weeks.progress().legs().stream()
              .flatMap(l -> l.latest(followed).map(s -> words.change(l, s)).stream())
              .toList();
      if (!changes.isEmpty()) {
        lines.add(words.name(followed));
        changes.forEach(c -> lines.add(INDENT + c));
      }
    }
    ProgressWords.method(weeks.progress()).forEach(lines::add);
    lines.add("");
    lines.add(heading(Words.say("progress.sides")));
    weeks.progress().sides().forEach(s -> lines.add(INDENT + words.sides(s)));
    words.sidesNotes(weeks.progress()).forEach(lines::add);
    lines.addAll(fading());
    lines.add("");
    lines.add(heading(Words.say("caution.heading")));
    Cautions.all().stream().forEach(c -> lines.add(INDENT + c));
    return lines;
  }

  private String heading(String text) {
    return layout.paint().heading(text);
  }

  private List<String> table(LegProgress leg) {
    List<Followed> shown =
        Stream.of(Followed.values()).filter(f -> !leg.stretches(f).isEmpty()).toList();
    if (shown.isEmpty()) {
      return List.of(INDENT + Words.say("progress.nothing"));
    }
    List<TextTable.Column> columns = new ArrayList<>();
    columns.add(left(Words.say("progress.date")));
    columns.add(left(Words.say("progress.step")));
    columns.add(left(Words.say("progress.target")));
    shown.forEach(
        f ->
            columns.add(
                new TextTable.Column(
                    Words.of(f, "short"), words.unit(f).strip(), TextTable.Edge.RIGHT)));
    TextTable table = new TextTable(columns);
    for (Row row : rows(leg, shown)) {
      List<TextTable.Cell> cells = new ArrayList<>();
      cells.add(TextTable.Cell.of(row.date().toString()));
      cells.add(TextTable.Cell.of(row.asking().step()));
      cells.add(TextTable.Cell.of(row.asking().target()));
      shown.forEach(f -> cells.add(TextTable.Cell.of(cell(leg, row, f))));
      table.row(cells);
    }
    return table.lines(layout);
  }

  private static TextTable.Column left(String name) {
    return new TextTable.Column(name, "", TextTable.Edge.LEFT);
  }

  /** One session of a leg with one thing asked for. */
  private record Row(LocalDate date, Asking asking) {}

  private static List<Row> rows(LegProgress leg, List<Followed> shown) {
    List<Row> rows = new ArrayList<>();
    for (Followed followed : shown) {
      for (Stretch stretch : leg.stretches(followed)) {
        stretch.values().stream()
            .map(v -> new Row(v.date(), stretch.asking()))
            .filter(r -> !rows.contains(r))
            .forEach(rows::add);
      }
    }
    List<Row> sorted = new ArrayList<>();
    for (LocalDate date : new TreeSet<>(rows.stream().map(Row::date).toList())) {
      rows.stream().filter(r -> r.date().equals(date)).forEach(sorted::add);
    }
    return sorted;
  }

  private String cell(LegProgress leg, Row row, Followed followed) {
    Optional<SessionValue> value =
        leg.stretches(followed).stream()
            .filter(s -> s.asking().equals(row.asking()))
            .flatMap(s -> s.values().stream())
            .filter(v -> v.date().equals(row.date()))
            .findFirst();
    return value
        .map(
            v ->
                ProgressWords.number(followed, v.value())
                    + (v.amount().forChange().isPresent()
                        ? layout.signs().plusMinus()
                            + ProgressWords.number(followed, v.amount().forChange().getAsDouble())
                        : ""))
        .orElse(layout.signs().dash());
  }

  private List<String> fading() {
    List<String> lines = new ArrayList<>();
    lines.add("");
    lines.add(heading(Words.say("progress.fading")));
    boolean any = false;
    for (LegProgress leg : weeks.progress().legs()) {
      for (Fading day : weeks.progress().fading(leg)) {
        lines.add(
            INDENT
                + day.date()
                + " "
                + ProgressWords.leg(leg.leg())
                + ": "
                + String.join("; ", FadingWords.of(day)));
        any = true;
      }
    }
    lines.add(any ? Words.say("progress.fading.note") : Words.say("progress.fading.none"));
    return lines;
  }
}
