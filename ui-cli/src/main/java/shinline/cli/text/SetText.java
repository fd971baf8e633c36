package shinline.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.cli.words.PrintedName;
import shinline.cli.words.Words;
import shinline.metrics.judgement.Asked;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Limit;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.SetUp;
import shinline.metrics.result.Verdict;
import shinline.metrics.target.Target;
import shinline.metrics.track.Side;

/** One clip's report as lines of text, verdict first. */
public final class SetText {
  /** What may as well be a true side view is not spoken of. */
  private static final double LEAST_YAW_SAID_DEG = 8;

  private static final String INDENT = "  ";

  private final Layout layout;

  public SetText(Layout layout) {
    this.layout = layout;
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
    lines.add(sentence(Headline.of(set)));
    lines.add("");
    lines.addAll(table(set));
    lines.addAll(notes(set));
    lines.add("");
    lines.add(Words.say("text.target", target(set.target())));
    lines.add(Words.say("text.seen", setUp(set.setUp())));
    lines.add(Words.say("text.clip", clip(report.clip())));
    SetUpWords.warnings(set.setUp(), report.warnings()).stream()
        .map(w -> Words.say("text.note", w))
        .forEach(lines::add);
    return lines;
  }

  private List<String> notMeasured(ClipReport.NotMeasured report) {
    List<String> lines = new ArrayList<>();
    lines.add(layout.paint().heading(PrintedName.of(report.clip().fileName())));
    lines.add(Words.say("text.not-measured", sentence(RefusalWords.reason(report.why()))));
    lines.add(Words.say("text.to-do", sentence(RefusalWords.advice(report.why()))));
    lines.add(Words.say("text.clip", clip(report.clip())));
    report.warnings().stream().map(w -> Words.say("text.note", w)).forEach(lines::add);
    return lines;
  }

  private List<String> unreadable(ClipReport.Unreadable report) {
    return List.of(
        layout.paint().heading(PrintedName.of(report.fileName())),
        Words.say("text.unreadable", sentence(report.reason())),
        Words.say("text.to-do", sentence(report.advice())));
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
                ? cell(rep.at(kneeMeasure), kneeMeasure.unit())
                : cell(rep.at(aspect), aspect.unit()));
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
    NothingFound.of(set).map(said -> INDENT + sentence(said)).ifPresent(lines::add);
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
                    + Words.say("text.reasons", String.join(", ", reps), sentence(what))));
    NotCountedWords.of(set)
        .forEach(line -> lines.add(INDENT + layout.signs().dash() + " " + sentence(line)));
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
        quantity(flag.value(), flag.unit()),
        quantity(flag.limit(), flag.unit()));
  }

  private String target(Target target) {
    List<String> parts = new ArrayList<>();
    if (target.shin().isEmpty()) {
      parts.add(Words.say("text.target.no-shin"));
    }
    Asked.of(target).stream()
        .flatMap(asked -> asked.fold(w -> Optional.of(limit(w.limit())), this::range).stream())
        .forEach(parts::add);
    return Words.say("text.list", String.join(", ", parts));
  }

  private String limit(Limit limit) {
    String range = range(limit.min(), limit.max(), limit.unit());
    return limit
        .band()
        .map(
            name ->
                Words.say(
                    "text.target.shin",
                    name,
                    limit.aspect() == Aspect.SHIN
                        ? Words.say("text.band.angle", range)
                        : Words.say("text.band.distance", range)))
        .orElseGet(() -> Words.say("text.target.limit", Words.of(limit.aspect(), "noun"), range));
  }

  /** The full range is told by the thigh that goes with it. */
  private Optional<String> range(Asked.OfRange asked) {
    return asked.range() == Finding.Range.SHORT
        ? Optional.of(Words.say("target.short-range"))
        : Optional.empty();
  }

  private String range(double min, double max, MeasureUnit unit) {
    if (Double.isInfinite(max)) {
      return Words.say("range.at-least", quantity(min, unit));
    }
    if (Double.isInfinite(min)) {
      return Words.say("range.at-most", quantity(max, unit));
    }
    return Words.say("range.between", quantity(min, unit), quantity(max, unit));
  }

  private String setUp(SetUp setUp) {
    SetUp.Camera camera = setUp.camera();
    List<String> parts = new ArrayList<>();
    parts.add(Words.say("seen.facing", word(setUp.facing())));
    parts.add(
        setUp.frontLegNearCamera()
            ? Words.say("seen.near-leg", word(setUp.frontLeg()))
            : Words.say("seen.far-leg", word(setUp.frontLeg())));
    parts.add(Words.say("seen.rear-foot", Words.of(setUp.rearFoot(), "name")));
    parts.add(
        switch (camera.rollSource()) {
          case GIVEN -> Words.say("seen.roll-given", signedDegrees(camera.rollDeg()));
          case BACKGROUND -> Words.say("seen.roll-background", signedDegrees(camera.rollDeg()));
          case NONE -> Words.say("seen.roll-none");
        });
    parts.add(
        switch (camera.pitchSource()) {
          case GIVEN -> Words.say("seen.pitch-given", signedDegrees(camera.pitchDeg()));
          case BACKGROUND -> Words.say("seen.pitch-background", signedDegrees(camera.pitchDeg()));
          case NONE -> Words.say("seen.pitch-none", signedDegrees(camera.pitchDeg()));
        });
    camera
        .yawDeg()
        .filter(y -> Math.abs(y) >= LEAST_YAW_SAID_DEG)
        .ifPresent(
            y ->
                parts.add(
                    Words.say(
                        y > 0 ? "seen.yaw-ahead" : "seen.yaw-behind",
                        Math.abs(y),
                        layout.signs().degree())));
    parts.add(Words.of(setUp.scaleSource(), "seen"));
    return Words.say("text.list", String.join("; ", parts));
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
        clip.poseModel());
  }

  private TextTable.Cell cell(Reading reading, MeasureUnit unit) {
    String format = unit == MeasureUnit.SECONDS ? "%.2f %s%.2f" : "%.1f %s%.1f";
    return TextTable.Cell.of(
        reading.fold(
            m ->
                String.format(
                    Locale.ROOT,
                    format,
                    tidy(shown(m.value(), unit)),
                    layout.signs().plusMinus(),
                    shown(m.plusMinus(), unit)),
            gap -> layout.signs().dash()));
  }

  /** A value as text with its unit, for running text. */
  private String quantity(double value, MeasureUnit unit) {
    String symbol =
        switch (unit) {
          case DEGREES -> layout.signs().degree();
          case CENTIMETRES -> " " + layout.units().lengthSymbol();
          default -> " " + Words.of(unit, "symbol");
        };
    int places = unit == MeasureUnit.METRES_PER_SECOND ? 2 : 1;
    return String.format(Locale.ROOT, "%." + places + "f", tidy(shown(value, unit))) + symbol;
  }

  private double shown(double value, MeasureUnit unit) {
    return unit == MeasureUnit.CENTIMETRES ? layout.units().fromCm(value) : value;
  }

  /** Keeps "-0.0" off the page. */
  private static double tidy(double value) {
    return Math.abs(value) < 0.05 && value < 0 ? 0 : value;
  }

  private String signedDegrees(double degrees) {
    return String.format(Locale.ROOT, "%+.1f", degrees) + layout.signs().degree();
  }

  private static String word(Side side) {
    return Words.of(side, "name");
  }

  private static TextTable.Column number(String name, String unit) {
    return new TextTable.Column(name, unit, TextTable.Edge.RIGHT);
  }

  private static TextTable.Column words(String name) {
    return new TextTable.Column(name, "", TextTable.Edge.LEFT);
  }

  /** A reason as a sentence: capital first letter, full stop. */
  private static String sentence(String text) {
    String start = text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    return start.endsWith(".") ? start : start + ".";
  }
}
