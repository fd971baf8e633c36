package shinline.cli.text;

import java.util.ArrayList;
import java.util.List;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.PhotoReport;
import shinline.cli.words.PrintedName;
import shinline.cli.words.Words;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.PostureResult;
import shinline.metrics.result.Reading;

/** One picture's report as lines of text. */
public final class PostureText {
  private static final String INDENT = "  ";

  private final Layout layout;
  private final TextParts parts;

  public PostureText(Layout layout) {
    this.layout = layout;
    parts = new TextParts(layout);
  }

  /** Lines without line ends. */
  public List<String> lines(PhotoReport report) {
    return report.fold(this::measured, this::notMeasured, this::unreadable);
  }

  private List<String> measured(PhotoReport.Measured report) {
    PostureResult posture = report.posture();
    List<String> lines = new ArrayList<>();
    lines.add(layout.paint().heading(PrintedName.of(report.photo().fileName())));
    lines.add(TextParts.sentence(PostureWords.headline(posture)));
    lines.add("");
    lines.addAll(table(posture));
    List<String> notes = new ArrayList<>();
    PostureWords.asked(posture).map(TextParts::sentence).ifPresent(notes::add);
    for (Measure measure : Measure.values()) {
      if (measure.seenInOnePosture() && posture.at(measure) instanceof Reading.NotMeasured gap) {
        notes.add(
            TextParts.sentence(
                Words.say("text.gap", Words.of(measure, "name"), Words.of(gap.gap(), "reason"))));
      }
    }
    if (!notes.isEmpty()) {
      lines.add("");
      notes.forEach(n -> lines.add(INDENT + n));
    }
    lines.add("");
    lines.add(Words.say("text.target", parts.target(posture.target())));
    lines.add(Words.say("text.seen", parts.setUp(posture.setUp())));
    lines.add(picture(report.photo()));
    SetUpWords.warnings(posture.setUp(), report.warnings()).stream()
        .map(SetText::note)
        .forEach(lines::add);
    return lines;
  }

  private List<String> table(PostureResult posture) {
    TextTable table =
        new TextTable(
            List.of(
                new TextTable.Column(Words.say("posture.table.measure"), "", TextTable.Edge.LEFT),
                new TextTable.Column(
                    Words.say("posture.table.value"),
                    layout.signs().plusMinus() + " 95 %",
                    TextTable.Edge.RIGHT),
                new TextTable.Column(Words.say("posture.table.unit"), "", TextTable.Edge.LEFT)));
    for (Measure measure : Measure.values()) {
      if (measure.seenInOnePosture()) {
        table.row(
            List.of(
                TextTable.Cell.of(Words.of(measure, "name")),
                parts.cell(posture.at(measure), measure.unit()),
                TextTable.Cell.of(unit(measure.unit()))));
      }
    }
    return table.lines(layout);
  }

  private String unit(MeasureUnit unit) {
    return switch (unit) {
      case DEGREES -> Words.say("table.unit.degrees");
      case CENTIMETRES -> layout.units().lengthSymbol();
      default -> Words.of(unit, "symbol");
    };
  }

  private List<String> notMeasured(PhotoReport.NotMeasured report) {
    List<String> lines = new ArrayList<>();
    lines.add(layout.paint().heading(PrintedName.of(report.photo().fileName())));
    lines.add(Words.say("text.not-measured", TextParts.sentence(PhotoWords.reason(report.why()))));
    lines.add(Words.say("text.to-do", TextParts.sentence(PhotoWords.advice(report.why()))));
    lines.add(picture(report.photo()));
    report.warnings().stream().map(SetText::note).forEach(lines::add);
    return lines;
  }

  private List<String> unreadable(PhotoReport.Unreadable report) {
    return List.of(
        layout.paint().heading(PrintedName.of(report.fileName())),
        Words.say("text.unreadable", TextParts.sentence(report.reason())),
        Words.say("text.to-do", TextParts.sentence(report.advice())));
  }

  private static String picture(ClipFacts photo) {
    return Words.say(
        "photo.facts", photo.widthPx(), photo.heightPx(), ModelWords.of(photo.poseModel()));
  }
}
