package shinline.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.cli.words.PrintedName;
import shinline.cli.words.Words;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.Verdict;
import shinline.metrics.result.Warning;

/** One clip's report as lines of text, verdict first. */
public final class SetText {
  private static final String INDENT = "  ";

  private final Layout layout;
  private final TextParts parts;

  public SetText(Layout layout) {
    this.layout = layout;
    parts = new TextParts(layout);
  }

  /** Lines without line ends. */
  public List<String> lines(ClipReport report) {
    return report.fold(this::measured, this::notMeasured, this::unreadable);
  }

  /** Said once under all reports. */
  public List<String> closing() {
    List<String> lines = new ArrayList<>();
    lines.add(layout.paint().heading(Words.say("text.limits")));
    Cautions.limits().forEach(l -> lines.add(INDENT + l));
    lines.add(layout.paint().heading(Words.say("caution.heading")));
    Cautions.safety().forEach(l -> lines.add(INDENT + l));
    return lines;
  }

  private List<String> measured(ClipReport.Measured report) {
    SetResult set = report.set();
    List<String> lines = new ArrayList<>();
    lines.add(layout.paint().heading(PrintedName.of(report.clip().fileName())));
    lines.add(TextParts.sentence(Headline.of(set)));
    lines.add("");
    lines.addAll(tables(set));
    lines.addAll(notes(set));
    lines.add("");
    lines.add(Words.say("text.target", parts.target(set.target())));
    lines.add(Words.say("text.seen", parts.setUp(set.setUp())));
    lines.add(Words.say("text.clip", clip(report.clip())));
    SetUpWords.warnings(set.setUp(), report.warnings()).stream()
        .map(SetText::note)
        .forEach(lines::add);
    return lines;
  }

  private List<String> notMeasured(ClipReport.NotMeasured report) {
    List<String> lines = new ArrayList<>();
    lines.add(layout.paint().heading(PrintedName.of(report.clip().fileName())));
    lines.add(
        Words.say("text.not-measured", TextParts.sentence(RefusalWords.reason(report.why()))));
    lines.add(Words.say("text.to-do", TextParts.sentence(RefusalWords.advice(report.why()))));
    lines.add(Words.say("text.clip", clip(report.clip())));
    report.warnings().stream().map(SetText::note).forEach(lines::add);
    return lines;
  }

  private List<String> unreadable(ClipReport.Unreadable report) {
    return List.of(
        layout.paint().heading(PrintedName.of(report.fileName())),
        Words.say("text.unreadable", TextParts.sentence(report.reason())),
        Words.say("text.to-do", TextParts.sentence(report.advice())));
  }

  /** Two tables, each narrow enough for a small terminal: the bottom, and the tempo. */
  private List<String> tables(SetResult set) {
    List<Aspect> shown = ShownAspects.of(set.target());
    List<String> lines = new ArrayList<>();
    lines.addAll(
        table(
            set,
            shown.stream().filter(a -> a.unit() != MeasureUnit.SECONDS).toList(),
            new TextTable.Column(Words.say("table.verdict"), "", TextTable.Edge.LEFT),
            this::verdict));
    lines.add("");
    lines.addAll(
        table(
            set,
            shown.stream().filter(a -> a.unit() == MeasureUnit.SECONDS).toList(),
            new TextTable.Column(Words.say("table.look-at"), "", TextTable.Edge.LEFT),
            SetText::lookAt));
    return lines;
  }

  private List<String> table(
      SetResult set,
      List<Aspect> shown,
      TextTable.Column last,
      Function<RepResult, TextTable.Cell> lastCell) {
    Measure kneeMeasure = kneeMeasure(set);
    List<TextTable.Column> columns = new ArrayList<>();
    columns.add(number(Words.say("table.rep"), ""));
    for (Aspect aspect : shown) {
      columns.add(number(Words.of(aspect, "column"), unit(aspect, kneeMeasure)));
    }
    columns.add(last);
    TextTable table = new TextTable(columns);
    for (RepResult rep : set.reps()) {
      List<TextTable.Cell> cells = new ArrayList<>();
      cells.add(TextTable.Cell.of(Integer.toString(rep.rep())));
      for (Aspect aspect : shown) {
        cells.add(
            aspect == Aspect.KNEE
                ? parts.cell(rep.at(kneeMeasure), kneeMeasure.unit())
                : parts.cell(rep.at(aspect), aspect.unit()));
      }
      cells.add(lastCell.apply(rep));
      table.row(cells);
    }
    return table.lines(layout);
  }

  private static TextTable.Cell lookAt(RepResult rep) {
    return TextTable.Cell.of(
        rep.flags().stream()
            .map(f -> FlagWords.of(f.kind()))
            .distinct()
            .collect(Collectors.joining(", ")));
  }

  /** A rep that a fault spoils is never shown as good. */
  private TextTable.Cell verdict(RepResult rep) {
    return rep.verdict()
        .map(verdict -> VerdictWords.looksBetter(rep) ? Verdict.NEAR : verdict)
        .flatMap(
            colour ->
                VerdictWords.of(rep)
                    .map(w -> new TextTable.Cell(w, layout.paint().verdict(colour, w))))
        .orElseGet(() -> TextTable.Cell.of(layout.signs().dash()));
  }

  private String unit(Aspect aspect, Measure kneeMeasure) {
    if (aspect == Aspect.KNEE && kneeMeasure != Measure.KNEE_PAST_TOE) {
      return Words.say("table.unit.foot");
    }
    return switch (aspect.unit()) {
      case DEGREES -> Words.say("table.unit.degrees");
      case CENTIMETRES -> layout.units().lengthSymbol();
      default -> aspect.unit().symbol();
    };
  }

  /** Without a scale the knee is told in parts of the foot, which needs none. */
  private static Measure kneeMeasure(SetResult set) {
    boolean centimetres =
        set.reps().stream().anyMatch(r -> r.at(Measure.KNEE_PAST_TOE).measured().isPresent());
    return centimetres ? Measure.KNEE_PAST_TOE : Measure.KNEE_PAST_TOE_FOOT;
  }

  private List<String> notes(SetResult set) {
    List<String> lines = new ArrayList<>();
    NothingFound.of(set).map(said -> INDENT + TextParts.sentence(said)).ifPresent(lines::add);
    SetFindings.of(set, parts).forEach(line -> lines.add(INDENT + TextParts.sentence(line)));
    gaps(set)
        .forEach(
            (gap, reps) ->
                lines.add(
                    dashed(
                        Words.say(
                            "text.found.why",
                            Words.say("finding.unmeasured", Words.of(gap.aspect(), "noun")),
                            Headline.reps(reps, set.reps().size()),
                            Words.of(gap.why(), "reason")))));
    NotCountedWords.of(set).forEach(line -> lines.add(dashed(line)));
    if (!lines.isEmpty()) {
      lines.add(0, "");
    }
    return lines;
  }

  private String dashed(String line) {
    return INDENT + layout.signs().dash() + " " + TextParts.sentence(line);
  }

  private record MissingCell(Aspect aspect, Gap why) {}

  /** Why cells of the table are empty, but for what the judgement or a note says already. */
  private static Map<MissingCell, List<Integer>> gaps(SetResult set) {
    boolean shouldersNoted = set.setUp().warnings().contains(Warning.PlainWarning.SHOULDERS_HIDDEN);
    Map<MissingCell, List<Integer>> gaps = new LinkedHashMap<>();
    for (RepResult rep : set.reps()) {
      for (Aspect aspect : ShownAspects.of(set.target())) {
        boolean judged =
            rep.judgement().findings().stream()
                .anyMatch(
                    f -> f instanceof Finding.Unmeasured && f.aspect().equals(Optional.of(aspect)));
        if (!judged && rep.at(aspect) instanceof Reading.NotMeasured missing) {
          if (missing.gap() != Gap.SHOULDERS_HIDDEN || !shouldersNoted) {
            gaps.computeIfAbsent(new MissingCell(aspect, missing.gap()), k -> new ArrayList<>())
                .add(rep.rep());
          }
        }
      }
    }
    return gaps;
  }

  private String clip(ClipFacts clip) {
    double fps = clip.medianFps();
    return Words.say(
        "text.clip.facts",
        clip.widthPx(),
        clip.heightPx(),
        clip.frames(),
        clip.durationS(),
        clip.variableFrameRate() ? Words.say("text.fps.uneven", fps) : Words.say("text.fps", fps),
        ModelWords.of(clip.poseModel()));
  }

  static String note(String warning) {
    return Words.say("text.note", warning.endsWith(".") ? warning : warning + ".");
  }

  private static TextTable.Column number(String name, String unit) {
    return new TextTable.Column(name, unit, TextTable.Edge.RIGHT);
  }
}
