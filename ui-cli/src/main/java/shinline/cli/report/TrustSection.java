package shinline.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.cli.text.Cautions;
import shinline.cli.text.Headline;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetUp;

/** How far to trust the numbers, and what to take care of. */
final class TrustSection {
  private TrustSection() {}

  static void write(Markup page, ClipReport.Measured report) {
    SetUp setUp = report.set().setUp();
    page.open("section", "class", "trust", "aria-labelledby", "trust");
    page.leaf("h2", "How far to trust this", "id", "trust");
    page.open("dl");
    row(page, "View", view(setUp));
    row(page, "Upright", roll(setUp));
    row(page, "Size", scale(setUp));
    row(page, "Clip", clip(report.clip()));
    Map<String, List<Integer>> missing = missing(report);
    List<String> gaps = new ArrayList<>();
    missing.forEach((what, reps) -> gaps.add(what + " (" + Headline.reps(reps) + ")"));
    rows(page, "Not measured", gaps.isEmpty() ? List.of("nothing is missing in the table") : gaps);
    rows(
        page,
        "Notes",
        Stream.concat(setUp.warnings().stream(), report.warnings().stream()).toList());
    rows(page, "Cannot be seen", Cautions.limits());
    page.close().end();
    cautions(page);
  }

  static void cautions(Markup page) {
    page.open("section", "class", "care", "aria-labelledby", "care");
    page.leaf("h2", "Take care", "id", "care");
    page.open("ul");
    Cautions.safety().forEach(l -> page.leaf("li", l));
    page.close().end();
  }

  private static void row(Markup page, String name, String text) {
    rows(page, name, List.of(text));
  }

  private static void rows(Markup page, String name, List<String> texts) {
    if (texts.isEmpty()) {
      return;
    }
    page.open("div").leaf("dt", name);
    texts.forEach(text -> page.leaf("dd", VerdictSection.sentence(text)));
    page.end();
  }

  private static String view(SetUp setUp) {
    String leg =
        setUp.frontLegNearCamera()
            ? "The front leg is the one near the camera."
            : "The front leg is the far one, partly hidden: less sure.";
    return setUp
            .yawDeg()
            .map(
                yaw ->
                    "The camera stood about "
                        + Figure.number(yaw, 0)
                        + "° off a true side view; angles are corrected for it. ")
            .orElse("How far the camera was off a true side view is not known. ")
        + leg;
  }

  private static String roll(SetUp setUp) {
    String turn = Figure.number(setUp.rollDeg(), 1) + "°";
    return switch (setUp.rollSource()) {
      case GIVEN -> "Camera tilt " + turn + " as given; angles are corrected for it.";
      case BACKGROUND ->
          "Camera tilt " + turn + " from lines in the background; angles are corrected for it.";
      case NONE ->
          "Camera tilt unknown, taken as level: every angle may be off by as much as the phone was"
              + " tilted.";
    };
  }

  private static String scale(SetUp setUp) {
    return switch (setUp.scaleSource()) {
      case HEIGHT -> "Centimetres come from the athlete's height.";
      case BENCH -> "Centimetres come from the height of the bench.";
      case DISC -> "Centimetres come from the disc.";
      case NONE -> "No size was given, so no centimetres: give --height, --bench or --disc.";
    };
  }

  static String clip(ClipFacts clip) {
    return String.format(
        Locale.ROOT,
        "%d × %d dots, %.1f s, %.0f frames a second%s; pose model %s.",
        clip.widthPx(),
        clip.heightPx(),
        clip.durationS(),
        clip.medianFps(),
        clip.variableFrameRate() ? " (uneven, true times used)" : "",
        clip.poseModel());
  }

  private static Map<String, List<Integer>> missing(ClipReport.Measured report) {
    Map<String, List<Integer>> missing = new LinkedHashMap<>();
    for (RepColumn column : RepColumn.of(report.set())) {
      for (RepResult rep : report.set().reps()) {
        if (column.reading().apply(rep) instanceof Reading.NotMeasured gap) {
          missing
              .computeIfAbsent(column.name() + ": " + gap.reason(), k -> new ArrayList<>())
              .add(rep.rep());
        }
      }
    }
    return missing;
  }
}
