package shinline.cli.report;

import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.outcome.ClipFacts;
import shinline.cli.outcome.PhotoReport;
import shinline.cli.picture.PosturePicture;
import shinline.cli.text.Cautions;
import shinline.cli.text.JudgementWords;
import shinline.cli.text.ModelWords;
import shinline.cli.text.PhotoWords;
import shinline.cli.text.PostureWords;
import shinline.cli.text.SetUpWords;
import shinline.cli.text.Units;
import shinline.cli.words.PrintedName;
import shinline.cli.words.Words;
import shinline.metrics.result.Aspect;
import shinline.metrics.result.Finding;
import shinline.metrics.result.Measure;
import shinline.metrics.result.PostureResult;
import shinline.metrics.result.Reading;
import shinline.metrics.result.SetUp;

/** One picture's page: a single HTML file that asks for nothing, and needs no script. */
public final class PosturePage {
  private static final String STYLE = PageParts.resource(PosturePage.class, "report.css");

  private final Units units;

  /**
   * @param units shown first; the reader can switch
   */
  public PosturePage(Units units) {
    this.units = units;
  }

  /** Writes the page of a measured posture. */
  public void write(PhotoReport.Measured report, Optional<PosturePicture> picture, Writer out)
      throws IOException {
    PostureResult posture = report.posture();
    Markup page = start(report.photo());
    UnitButtons.write(page, units);
    page.open("main").line();
    page.open("header");
    page.leaf("p", origin(report), "class", "origin").line();
    page.leaf("h1", VerdictSection.sentence(PostureWords.headline(posture))).line();
    page.end();
    reasons(page, posture);
    picture(page, picture);
    table(page, posture);
    trust(page, report);
    TrustSection.cautions(page);
    finish(page, report.photo());
    out.write(page.done());
  }

  /** Writes the page of a picture in which no posture could be measured: why, and what to do. */
  public void write(PhotoReport.NotMeasured report, Writer out) throws IOException {
    Markup page = start(report.photo());
    page.open("main").line();
    page.open("header");
    page.leaf("p", name(report.photo()), "class", "origin");
    page.leaf(
        "h1",
        Words.say("text.not-measured", VerdictSection.sentence(PhotoWords.reason(report.why()))));
    page.end();
    page.open("section", "aria-labelledby", "what-to-do");
    page.leaf("h2", Words.say("report.to-do"), "id", "what-to-do");
    page.leaf("p", VerdictSection.sentence(PhotoWords.advice(report.why())), "class", "lead");
    report.warnings().forEach(w -> page.leaf("p", VerdictSection.sentence(w)));
    page.leaf("p", facts(report.photo()), "class", "note");
    page.end();
    TrustSection.cautions(page);
    finish(page, report.photo());
    out.write(page.done());
  }

  private static Markup start(ClipFacts photo) {
    Markup page = new Markup();
    PageParts.head(
        page, Words.say("photo.title", name(photo)), STYLE, Optional.empty(), Optional.empty());
    return page.open("body");
  }

  private static String name(ClipFacts photo) {
    return PrintedName.of(photo.fileName());
  }

  private static String origin(PhotoReport.Measured report) {
    SetUp setUp = report.posture().setUp();
    return Words.say(
        "report.origin",
        name(report.photo()),
        Words.of(setUp.frontLeg(), "name"),
        Words.of(setUp.rearFoot(), "name"));
  }

  private static void reasons(Markup page, PostureResult posture) {
    List<String> reasons = JudgementWords.reasons(posture.judgement());
    if (reasons.isEmpty()) {
      return;
    }
    page.open("section", "aria-labelledby", "reasons");
    page.leaf("h2", Words.say("photo.reasons"), "id", "reasons");
    reasons.forEach(r -> page.leaf("p", VerdictSection.sentence(r), "class", "lead"));
    posture.flags().forEach(flag -> page.leaf("p", Cue.sentence(flag)));
    page.end();
  }

  private static void picture(Markup page, Optional<PosturePicture> picture) {
    picture.ifPresent(
        p -> {
          page.open("section", "aria-labelledby", "picture");
          page.leaf("h2", Words.say("photo.picture"), "id", "picture");
          page.open("figure");
          page.picture(
              p.jpeg(),
              p.altText(),
              "width",
              Integer.toString(p.widthPx()),
              "height",
              Integer.toString(p.heightPx()));
          page.open("figcaption")
              .leaf("span", Words.say("photo.picture.key"), "class", "numbers")
              .close();
          page.close().end();
        });
  }

  private static void table(Markup page, PostureResult posture) {
    Map<Aspect, Mark> marks = new EnumMap<>(Aspect.class);
    for (Finding finding : posture.judgement().findings()) {
      finding.aspect().ifPresent(a -> marks.put(a, Mark.of(finding.verdict())));
    }
    page.open("section", "aria-labelledby", "measures");
    page.leaf("h2", Words.say("photo.measures"), "id", "measures");
    page.open("p", "class", "note");
    page.words("photo.measures.note", p -> TargetLine.write(p, posture.target()));
    page.end();
    page.open("dl", "class", "posture");
    for (Measure measure : Measure.values()) {
      if (measure.seenInOnePosture()) {
        row(page, measure, posture.at(measure), mark(marks, measure));
      }
    }
    page.close().end();
  }

  /** A limit is set on the knee in centimetres, never in parts of the foot. */
  private static Optional<Mark> mark(Map<Aspect, Mark> marks, Measure measure) {
    return switch (measure) {
      case SHIN -> Optional.ofNullable(marks.get(Aspect.SHIN));
      case KNEE_PAST_TOE -> Optional.ofNullable(marks.get(Aspect.KNEE));
      case TRUNK_LEAN -> Optional.ofNullable(marks.get(Aspect.TRUNK));
      case THIGH -> Optional.ofNullable(marks.get(Aspect.THIGH));
      case REAR_KNEE_HEIGHT -> Optional.ofNullable(marks.get(Aspect.REAR_KNEE));
      case KNEE_PAST_TOE_FOOT, KNEE_FLEXION, HIP_FLEXION, HIP_TRAVEL, HIP_TRAVEL_LEG ->
          Optional.empty();
    };
  }

  private static void row(Markup page, Measure measure, Reading reading, Optional<Mark> mark) {
    page.open("div").leaf("dt", Words.of(measure, "name"));
    page.open("dd");
    reading.fold(
        measured -> {
          Figure.reading(page, measured, measure.unit());
          page.text(" ");
          Figure.unit(page, measure.unit());
          return page;
        },
        gap -> page.text(Words.say("photo.gap", Words.of(gap.gap(), "reason"))));
    mark.ifPresent(
        m -> {
          page.text(" ");
          page.open("span", "class", m.styleClass());
          m.write(page);
          page.close();
        });
    page.leaf("small", Words.of(measure, "meaning"));
    page.close().end();
  }

  private static void trust(Markup page, PhotoReport.Measured report) {
    SetUp setUp = report.posture().setUp();
    page.open("section", "class", "trust", "aria-labelledby", "trust");
    page.leaf("h2", Words.say("report.trust"), "id", "trust");
    page.open("dl");
    TrustSection.rows(
        page,
        Words.say("report.trust.accuracy"),
        List.of(Words.say("photo.trust"), Words.say("trust.made"), Words.say("trust.people")));
    TrustSection.row(page, Words.say("report.trust.view"), TrustSection.view(setUp));
    TrustSection.rows(
        page,
        Words.say("report.trust.upright"),
        List.of(TrustSection.roll(setUp), TrustSection.pitch(setUp)));
    TrustSection.row(page, Words.say("report.trust.size"), TrustSection.scale(setUp));
    TrustSection.row(page, Words.say("photo.trust.picture"), facts(report.photo()));
    TrustSection.rows(
        page, Words.say("report.trust.notes"), SetUpWords.warnings(setUp, report.warnings()));
    List<String> unseen = new ArrayList<>();
    unseen.add(Words.say("photo.trust.motion"));
    unseen.addAll(Cautions.limits());
    TrustSection.rows(page, Words.say("report.trust.limits"), unseen);
    page.close().end();
  }

  private static String facts(ClipFacts photo) {
    return Words.say(
        "photo.facts", photo.widthPx(), photo.heightPx(), ModelWords.of(photo.poseModel()));
  }

  private static void finish(Markup page, ClipFacts photo) {
    page.open("footer");
    page.leaf(
        "p",
        Words.say(
            "photo.footer", photo.sha256().substring(0, Math.min(12, photo.sha256().length()))));
    page.close().end();
    page.close().end();
  }
}
