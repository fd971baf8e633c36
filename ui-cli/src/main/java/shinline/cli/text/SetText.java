package shinline.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.cli.words.PrintedName;
import shinline.cli.words.Words;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Measure;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.Verdict;
import shinline.metrics.target.Target;

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
    lines.addAll(table(set));
    lines.addAll(notes(set));
    lines.add("");
    lines.add(Words.say("text.target", parts.target(set.target())));
    lines.add(Words.say("text.seen", parts.setUp(set.setUp())));
    lines.add(Words.say("text.clip", clip(report.clip())));
    SetUpWords.warnings(set.setUp(), report.warnings()).stream()
        .map(w -> Words.say("text.note", w))
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
    report.warnings().stream().map(w -> Words.say("text.note", w)).forEach(lines::add);
    return lines;
  }

  private List<String> unreadable(ClipReport.Unreadable report) {
    return List.of(
        layout.paint().heading(PrintedName.of(report.fileName())),
        Words.say("text.unreadable", TextParts.sentence(report.reason())),
        Words.say("text.to-do", TextParts.sentence(report.advice())));
  }

  private List<String> table(SetResult set) {
    Measure kneeMeasure = kneeMeasure(set);
    List<Aspect> shown = ShownAspects.of(set.target());
    List<TextTable.Column> columns = new ArrayList<>();
    columns.add(number(Words.say("table.rep"), ""));
    for (Aspect aspect : shown) {
      columns.add(number(Words.of(aspect, "column"), unit(aspect, kneeMeasure)));
    }
    columns.add(words(Words.say("table.verdict")));
    columns.add(words(Words.say("table.look-at")));
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
      cells.add(verdict(rep));
      cells.add(
          TextTable.Cell.of(
              rep.flags().stream()
                  .map(f -> FlagWords.of(f.kind()))
                  .distinct()
                  .collect(Collectors.joining(", "))));
      table.row(cells);
    }
    return table.lines(layout);
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
    for (RepResult rep : set.reps()) {
      if (!JudgementWords.reasons(rep).isEmpty()) {
        lines.add(
            INDENT
                + Words.say(
                    "text.reasons", rep.rep(), String.join("; ", JudgementWords.reasons(rep))));
      }
      for (Flag flag : rep.flags()) {
        lines.add(INDENT + Words.say("text.flag.of-rep", rep.rep(), flag(flag)));
      }
    }
    Map<String, List<String>> repsOf = new LinkedHashMap<>();
    for (RepResult rep : set.reps()) {
      missing(rep, set.target())
          .forEach(
              (what, reason) ->
                  repsOf
                      .computeIfAbsent(Words.say("text.gap", what, reason), k -> new ArrayList<>())
                      .add(Integer.toString(rep.rep())));
    }
    repsOf.forEach(
        (what, reps) ->
            lines.add(
                INDENT
                    + layout.signs().dash()
                    + " "
                    + Words.say(
                        "text.reasons", String.join(", ", reps), TextParts.sentence(what))));
    NotCountedWords.of(set)
        .forEach(
            line -> lines.add(INDENT + layout.signs().dash() + " " + TextParts.sentence(line)));
    if (!lines.isEmpty()) {
      lines.add(0, "");
    }
    return lines;
  }

  private Map<String, String> missing(RepResult rep, Target target) {
    Map<String, String> reasons = new LinkedHashMap<>();
    for (Aspect aspect : ShownAspects.of(target)) {
      rep.at(aspect)
          .fold(
              measured -> null,
              gap -> reasons.put(Words.of(aspect, "noun"), Words.of(gap.gap(), "reason")));
    }
    return reasons;
  }

  private String flag(Flag flag) {
    return Words.say(
        "text.flag",
        flag.atS(),
        flag.frame(),
        FlagWords.of(flag.kind()),
        parts.quantity(flag.value(), flag.unit()),
        parts.quantity(flag.limit(), flag.unit()));
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

  private static TextTable.Column number(String name, String unit) {
    return new TextTable.Column(name, unit, TextTable.Edge.RIGHT);
  }

  private static TextTable.Column words(String name) {
    return new TextTable.Column(name, "", TextTable.Edge.LEFT);
  }
}
