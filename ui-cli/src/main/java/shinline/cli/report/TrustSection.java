package shinline.cli.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.ClipReport;
import shinline.cli.text.Cautions;
import shinline.cli.text.Headline;
import shinline.cli.text.ModelWords;
import shinline.cli.text.NotCountedWords;
import shinline.cli.text.SetUpWords;
import shinline.cli.words.Words;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetUp;

/** How far to trust the numbers, and what to take care of. */
final class TrustSection {
  /** Less reads as nothing once it is rounded. */
  private static final double LEAST_YAW_SAID_DEG = 0.5;

  private TrustSection() {}

  static void write(Markup page, ClipReport.Measured report) {
    SetUp setUp = report.set().setUp();
    page.open("section", "class", "trust", "aria-labelledby", "trust");
    page.leaf("h2", Words.say("report.trust"), "id", "trust");
    page.open("dl");
    rows(
        page,
        Words.say("report.trust.accuracy"),
        List.of(Words.say("trust.made"), Words.say("trust.people"), Words.say("trust.coach")));
    row(page, Words.say("report.trust.view"), view(setUp));
    rows(page, Words.say("report.trust.upright"), List.of(roll(setUp), pitch(setUp)));
    row(page, Words.say("report.trust.size"), scale(setUp));
    row(page, Words.say("report.trust.clip"), clip(report.clip()));
    Map<String, List<Integer>> missing = missing(report);
    List<String> gaps = new ArrayList<>();
    missing.forEach(
        (what, reps) -> gaps.add(Words.say("report.trust.gap", what, Headline.reps(reps))));
    rows(
        page,
        Words.say("report.trust.missing"),
        gaps.isEmpty() ? List.of(Words.say("report.trust.nothing-missing")) : gaps);
    rows(page, Words.say("report.trust.not-counted"), NotCountedWords.of(report.set()));
    rows(page, Words.say("report.trust.notes"), SetUpWords.warnings(setUp, report.warnings()));
    rows(page, Words.say("report.trust.limits"), Cautions.limits());
    page.close().end();
    cautions(page);
  }

  static void cautions(Markup page) {
    page.open("section", "class", "care", "aria-labelledby", "care");
    page.leaf("h2", Words.say("caution.heading"), "id", "care");
    page.open("ul");
    Cautions.safety().forEach(l -> page.leaf("li", l));
    page.close().end();
  }

  static void row(Markup page, String name, String text) {
    rows(page, name, List.of(text));
  }

  static void rows(Markup page, String name, List<String> texts) {
    if (texts.isEmpty()) {
      return;
    }
    page.open("div").leaf("dt", name);
    texts.forEach(text -> page.leaf("dd", VerdictSection.sentence(text)));
    page.end();
  }

  static String view(SetUp setUp) {
    String leg =
        setUp.frontLegNearCamera()
            ? Words.say("report.trust.near-leg")
            : Words.say("report.trust.far-leg");
    return setUp
        .camera()
        .yawDeg()
        .map(
            yaw ->
                Math.abs(yaw) < LEAST_YAW_SAID_DEG
                    ? Words.say("report.trust.no-turn", leg)
                    : Words.say(
                        yaw < 0 ? "report.trust.yaw-behind" : "report.trust.yaw-ahead",
                        Figure.number(Math.abs(yaw), 0),
                        leg))
        .orElseGet(() -> Words.say("report.trust.no-yaw", leg));
  }

  static String roll(SetUp setUp) {
    String turn = Figure.number(setUp.camera().rollDeg(), 1);
    return switch (setUp.camera().rollSource()) {
      case GIVEN -> Words.say("report.trust.roll-given", turn);
      case BACKGROUND -> Words.say("report.trust.roll-background", turn);
      case NONE -> Words.say("report.trust.roll-none");
    };
  }

  static String pitch(SetUp setUp) {
    double pitchDeg = setUp.camera().pitchDeg();
    String looking =
        Words.say(
            pitchDeg <= -0.05 ? "camera.looking.up" : "camera.looking.down",
            Figure.number(Math.abs(pitchDeg), 1) + "°");
    return switch (setUp.camera().pitchSource()) {
      case GIVEN -> Words.say("report.trust.pitch-given", looking);
      case BACKGROUND -> Words.say("report.trust.pitch-background", looking);
      case NONE -> Words.say("report.trust.pitch-none", looking);
    };
  }

  static String scale(SetUp setUp) {
    return Words.of(setUp.scaleSource(), "trust");
  }

  static String clip(ClipFacts clip) {
    double fps = clip.medianFps();
    return Words.say(
        "report.trust.clip.facts",
        clip.widthPx(),
        clip.heightPx(),
        clip.durationS(),
        clip.variableFrameRate()
            ? Words.say("report.trust.fps.uneven", fps)
            : Words.say("report.trust.fps", fps),
        ModelWords.of(clip.poseModel()));
  }

  private static Map<String, List<Integer>> missing(ClipReport.Measured report) {
    Map<String, List<Integer>> missing = new LinkedHashMap<>();
    for (RepColumn column : RepColumn.of(report.set())) {
      for (RepResult rep : report.set().reps()) {
        if (column.reading().apply(rep) instanceof Reading.NotMeasured gap) {
          missing
              .computeIfAbsent(
                  Words.say("report.trust.gap.of", column.name(), Words.of(gap.gap(), "reason")),
                  k -> new ArrayList<>())
              .add(rep.rep());
        }
      }
    }
    return missing;
  }
}
