package shinline.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetResult;
import shinline.metrics.result.SetUp;
import shinline.metrics.target.ShinTarget;
import shinline.metrics.target.Target;
import shinline.metrics.track.Side;

/** One clip's report as lines of text, verdict first. */
public final class SetText {
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
    lines.add(layout.paint().heading("What this cannot see"));
    Cautions.limits().forEach(l -> lines.add("  " + l));
    lines.add(layout.paint().heading("Take care"));
    Cautions.safety().forEach(l -> lines.add("  " + l));
    return lines;
  }

  private List<String> measured(ClipReport.Measured report) {
    SetResult set = report.set();
    List<String> lines = new ArrayList<>();
    lines.add(layout.paint().heading(report.clip().fileName()));
    lines.add(sentence(Headline.of(set)));
    lines.add("");
    lines.addAll(table(set));
    lines.addAll(notes(set));
    lines.add("");
    lines.add("Asked for: " + target(set.target()));
    lines.add("Seen: " + setUp(set.setUp()));
    lines.add("Clip: " + clip(report.clip()));
    Stream.concat(set.setUp().warnings().stream(), report.warnings().stream())
        .map(w -> "Note: " + w)
        .forEach(lines::add);
    return lines;
  }

  private List<String> notMeasured(ClipReport.NotMeasured report) {
    List<String> lines = new ArrayList<>();
    lines.add(layout.paint().heading(report.clip().fileName()));
    lines.add("Not measured: " + sentence(report.why().reason()));
    lines.add("What to do: " + sentence(report.why().advice()));
    lines.add("Clip: " + clip(report.clip()));
    report.warnings().stream().map(w -> "Note: " + w).forEach(lines::add);
    return lines;
  }

  private List<String> unreadable(ClipReport.Unreadable report) {
    return List.of(
        layout.paint().heading(report.fileName()),
        "Cannot be read: " + sentence(report.reason()),
        "What to do: " + sentence(report.advice()));
  }

  private List<String> table(SetResult set) {
    Measure kneeMeasure = kneeMeasure(set);
    // With nothing asked for, every rep would read as a hit.
    boolean judged = !set.target().equals(Target.none());
    String deg = "deg";
    String length = layout.units().lengthSymbol();
    TextTable table =
        new TextTable(
            List.of(
                number("Rep", ""),
                number("Lowering", "s"),
                number("Hold", "s"),
                number("Drive", "s"),
                number("Shin", deg),
                number(
                    "Knee past toe", kneeMeasure == Measure.KNEE_PAST_TOE ? length : "% of foot"),
                number("Trunk", deg),
                number("Thigh", deg),
                number("Rear knee", length),
                words("Verdict"),
                words("Look at")));
    for (RepResult rep : set.reps()) {
      String verdict = rep.verdict().name().toLowerCase(Locale.ROOT);
      table.row(
          List.of(
              TextTable.Cell.of(Integer.toString(rep.rep())),
              cell(rep.tempo().lowering(), MeasureUnit.SECONDS),
              cell(rep.tempo().hold(), MeasureUnit.SECONDS),
              cell(rep.tempo().drive(), MeasureUnit.SECONDS),
              cell(rep.at(Measure.SHIN), MeasureUnit.DEGREES),
              cell(rep.at(kneeMeasure), kneeMeasure.unit()),
              cell(rep.at(Measure.TRUNK_LEAN), MeasureUnit.DEGREES),
              cell(rep.at(Measure.THIGH), MeasureUnit.DEGREES),
              cell(rep.at(Measure.REAR_KNEE_HEIGHT), MeasureUnit.CENTIMETRES),
              judged
                  ? new TextTable.Cell(verdict, layout.paint().verdict(rep.verdict(), verdict))
                  : TextTable.Cell.of(layout.signs().dash()),
              TextTable.Cell.of(
                  rep.flags().stream()
                      .map(f -> FlagWords.of(f.kind()))
                      .distinct()
                      .collect(Collectors.joining(", ")))));
    }
    return table.lines(layout);
  }

  /** Without a scale the knee is told in parts of the foot, which needs none. */
  private static Measure kneeMeasure(SetResult set) {
    boolean centimetres =
        set.reps().stream().anyMatch(r -> r.at(Measure.KNEE_PAST_TOE).measured().isPresent());
    return centimetres ? Measure.KNEE_PAST_TOE : Measure.KNEE_PAST_TOE_FOOT;
  }

  private List<String> notes(SetResult set) {
    List<String> lines = new ArrayList<>();
    for (RepResult rep : set.reps()) {
      if (!rep.reasons().isEmpty()) {
        lines.add("  Rep " + rep.rep() + ": " + String.join("; ", rep.reasons()));
      }
      for (Flag flag : rep.flags()) {
        lines.add("  Rep " + rep.rep() + ", " + flag(flag));
      }
    }
    Map<String, List<String>> repsOf = new LinkedHashMap<>();
    for (RepResult rep : set.reps()) {
      missing(rep)
          .forEach(
              (what, reason) ->
                  repsOf
                      .computeIfAbsent(what + " not measured: " + reason, k -> new ArrayList<>())
                      .add(Integer.toString(rep.rep())));
    }
    repsOf.forEach(
        (what, reps) ->
            lines.add(
                "  "
                    + layout.signs().dash()
                    + " Rep "
                    + String.join(", ", reps)
                    + ": "
                    + sentence(what)));
    if (!lines.isEmpty()) {
      lines.add(0, "");
    }
    return lines;
  }

  private Map<String, String> missing(RepResult rep) {
    Map<String, Reading> shown = new LinkedHashMap<>();
    shown.put("lowering", rep.tempo().lowering());
    shown.put("hold", rep.tempo().hold());
    shown.put("drive", rep.tempo().drive());
    shown.put("shin", rep.at(Measure.SHIN));
    shown.put("knee past toe", rep.at(Measure.KNEE_PAST_TOE));
    shown.put("trunk", rep.at(Measure.TRUNK_LEAN));
    shown.put("thigh", rep.at(Measure.THIGH));
    shown.put("rear knee", rep.at(Measure.REAR_KNEE_HEIGHT));
    Map<String, String> reasons = new LinkedHashMap<>();
    shown.forEach(
        (what, reading) -> reading.fold(measured -> null, gap -> reasons.put(what, gap.reason())));
    return reasons;
  }

  private String flag(Flag flag) {
    return String.format(
        Locale.ROOT,
        "%.1f s (frame %d): %s, %s against a limit of %s",
        flag.atS(),
        flag.frame(),
        FlagWords.of(flag.kind()),
        quantity(flag.value(), flag.unit()),
        quantity(flag.limit(), flag.unit()));
  }

  private String target(Target target) {
    List<String> parts = new ArrayList<>();
    parts.add(
        target
            .shin()
            .map(s -> "shin " + s.name() + " (" + band(s) + ")")
            .orElse("no shin target (set one with --target)"));
    target
        .depth()
        .maxThighDeg()
        .ifPresent(d -> parts.add("thigh at most " + quantity(d, MeasureUnit.DEGREES)));
    target
        .depth()
        .maxRearKneeCm()
        .ifPresent(d -> parts.add("rear knee at most " + quantity(d, MeasureUnit.CENTIMETRES)));
    target
        .depth()
        .minHipTravelCm()
        .ifPresent(d -> parts.add("hips down by " + quantity(d, MeasureUnit.CENTIMETRES)));
    target
        .trunk()
        .ifPresent(t -> parts.add("trunk " + range(t.minDeg(), t.maxDeg(), MeasureUnit.DEGREES)));
    target
        .tempo()
        .lowering()
        .ifPresent(p -> parts.add("lowering " + range(p.minS(), p.maxS(), MeasureUnit.SECONDS)));
    target
        .tempo()
        .hold()
        .ifPresent(p -> parts.add("hold " + range(p.minS(), p.maxS(), MeasureUnit.SECONDS)));
    target
        .tempo()
        .drive()
        .ifPresent(p -> parts.add("drive " + range(p.minS(), p.maxS(), MeasureUnit.SECONDS)));
    return String.join(", ", parts) + ".";
  }

  private String band(ShinTarget shin) {
    return shin.fold(
        a -> "shin " + range(a.minDeg(), a.maxDeg(), MeasureUnit.DEGREES),
        d -> "knee " + range(d.minCm(), d.maxCm(), MeasureUnit.CENTIMETRES) + " past the toe");
  }

  private String range(double min, double max, MeasureUnit unit) {
    if (Double.isInfinite(max)) {
      return "at least " + quantity(min, unit);
    }
    if (Double.isInfinite(min)) {
      return "at most " + quantity(max, unit);
    }
    return quantity(min, unit) + " to " + quantity(max, unit);
  }

  private String setUp(SetUp setUp) {
    List<String> parts = new ArrayList<>();
    parts.add("facing " + word(setUp.facing()));
    parts.add(
        word(setUp.frontLeg())
            + " leg in front, "
            + (setUp.frontLegNearCamera() ? "near" : "far from")
            + " the camera");
    parts.add("rear foot on the " + setUp.rearFoot().name().toLowerCase(Locale.ROOT));
    parts.add(
        switch (setUp.rollSource()) {
          case GIVEN -> "camera tilt " + signedDegrees(setUp.rollDeg()) + " as given";
          case BACKGROUND ->
              "camera tilt " + signedDegrees(setUp.rollDeg()) + " from lines in the background";
          case NONE -> "camera tilt unknown, taken as level";
        });
    setUp
        .yawDeg()
        .ifPresent(
            y ->
                parts.add(
                    String.format(
                        Locale.ROOT,
                        "camera about %.0f%s off a true side view",
                        y,
                        layout.signs().degree())));
    parts.add(
        switch (setUp.scaleSource()) {
          case HEIGHT -> "centimetres from the athlete's height";
          case BENCH -> "centimetres from the bench";
          case DISC -> "centimetres from the disc";
          case NONE -> "no scale, so no centimetres (give --height, --bench or --disc)";
        });
    return String.join("; ", parts) + ".";
  }

  private String clip(ClipFacts clip) {
    return String.format(
        Locale.ROOT,
        "%dx%d px, %d frames, %.1f s, %.1f frames a second%s; pose model %s.",
        clip.widthPx(),
        clip.heightPx(),
        clip.frames(),
        clip.durationS(),
        clip.medianFps(),
        clip.variableFrameRate() ? " (uneven)" : "",
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
          case PERCENT_OF_FOOT -> " % of foot length";
          case PERCENT_OF_LEG -> " % of leg length";
          case PERCENT -> " %";
          case SECONDS, METRES_PER_SECOND -> " " + unit.symbol();
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
    return side.name().toLowerCase(Locale.ROOT);
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
