package shinline.cli.report;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shinline.cli.text.FlagWords;
import shinline.cli.text.JudgementWords;
import shinline.cli.words.Words;
import shinline.metrics.judgement.Asked;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.target.Target;

/**
 * Every rep with its numbers; on a narrow screen the style sheet turns each row into a card. Roles
 * are written out because some browsers forget that a table is one once its display is changed.
 */
final class TableSection {
  /** With more reps than this the printed table leaves out the sentences. */
  private static final int FEW = 3;

  private final Markup page;
  private final List<RepColumn> columns;

  TableSection(Markup page, SetResult set) {
    this.page = page;
    columns = RepColumn.of(set);
  }

  void write(SetResult set) {
    page.open("section", "aria-labelledby", "reps");
    page.leaf("h2", Words.say("report.table"), "id", "reps");
    page.open("p", "class", "note");
    page.words("report.table.note", p -> TargetLine.write(p, set.target()));
    page.end();
    page.open(
        "table",
        "role",
        "table",
        "aria-labelledby",
        "reps",
        "class",
        set.reps().size() > FEW ? "many" : "few");
    head();
    page.open("tbody", "role", "rowgroup");
    set.reps().forEach(this::row);
    page.close().end();
    key(set.target());
    page.end();
  }

  private void head() {
    page.open("thead", "role", "rowgroup").open("tr", "role", "row");
    heading(Words.say("table.rep"));
    heading(Words.say("table.verdict"));
    for (RepColumn column : columns) {
      page.open("th", "scope", "col", "role", "columnheader").text(column.name() + " ");
      page.open("small");
      Figure.unit(page, column.unit());
      page.close().close();
    }
    heading(Words.say("table.look-at"));
    page.close().end();
  }

  private void heading(String name) {
    page.leaf("th", name, "scope", "col", "role", "columnheader");
  }

  private void row(RepResult rep) {
    Map<Aspect, Mark> marks = marks(rep);
    Mark verdict = Mark.of(rep);
    page.open("tr", "role", "row", "id", "rep-" + rep.rep());
    Figure.rowHeading(page, rep.rep());
    page.open("td", "role", "cell", "class", "verdict " + verdict.styleClass());
    page.leaf("span", verdict.sign(), "class", "sign", "aria-hidden", "true");
    page.text(" " + verdict.word()).close();
    for (RepColumn column : columns) {
      cell(rep, column, Optional.ofNullable(marks.get(column.aspect())));
    }
    String faults =
        rep.flags().stream()
            .map(f -> FlagWords.of(f.kind()))
            .distinct()
            .collect(Collectors.joining(", "));
    boolean nothing = faults.isEmpty() && JudgementWords.reasons(rep).isEmpty();
    page.open("td", "role", "cell", "class", nothing ? "words none" : "words");
    page.leaf("span", Words.say("table.look-at"), "class", "label", "aria-hidden", "true");
    if (!faults.isEmpty()) {
      page.leaf("b", faults);
    }
    if (!JudgementWords.reasons(rep).isEmpty()) {
      page.leaf("span", String.join("; ", JudgementWords.brief(rep)), "class", "reason");
    }
    if (nothing) {
      page.text("–");
    }
    page.close().end();
  }

  private void cell(RepResult rep, RepColumn column, Optional<Mark> asked) {
    boolean flagged =
        rep.flags().stream().anyMatch(f -> column.faults().contains(f.kind().picture()));
    boolean showFlag = flagged && asked.filter(m -> m != Mark.HIT).isEmpty();
    Reading reading = column.reading().apply(rep);
    String style = showFlag ? "mark-flag" : asked.map(Mark::styleClass).orElse("plain");
    page.open("td", "role", "cell", "class", style);
    Figure.label(page, column.name(), column.unit());
    reading.fold(
        measured -> {
          Figure.reading(page, measured, column.unit());
          return page;
        },
        gap -> page.leaf("span", "–", "title", Words.of(gap.gap(), "reason")));
    if (showFlag) {
      page.leaf("span", " !", "class", "sign", "aria-hidden", "true");
      page.leaf("span", " " + Words.say("report.table.flagged"), "class", "spoken");
    } else {
      asked.ifPresent(
          mark -> {
            page.text(" ");
            mark.write(page);
          });
    }
    page.close();
  }

  private static Map<Aspect, Mark> marks(RepResult rep) {
    Map<Aspect, Mark> marks = new EnumMap<>(Aspect.class);
    for (Finding finding : rep.judgement().findings()) {
      finding.aspect().ifPresent(a -> marks.put(a, Mark.of(finding.verdict())));
    }
    return marks;
  }

  private void key(Target target) {
    page.open("p", "class", "note key");
    page.text(
        Words.say(Asked.of(target).isEmpty() ? "report.table.key" : "report.table.key.judged"));
    page.end();
  }
}
