package shinline.cli.accuracy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.Sets;
import shinline.cli.check.CheckOptions;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ClipReport;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.reps.RepTimes;
import shinline.metrics.result.DriveReading;
import shinline.metrics.result.Flag;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepJudgement;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.SetSummary;
import shinline.metrics.result.SetUp;
import shinline.metrics.result.TempoReading;
import shinline.metrics.track.Side;

/** A sample clip's truth against a made-up result whose errors are known. */
class AccuracyCommandTest {
  private static final String CLIP = "plain1-bench-shallow";

  /** Every told angle is this much too large, with ± 1.5: inside. */
  private static final double ANGLE_ERROR = 0.5;

  /** Every told distance is this much too small, with ± 1: outside. */
  private static final double LENGTH_ERROR = -2;

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final List<CheckOptions> asked = new ArrayList<>();

  private int run(String... args) {
    CommandContext surroundings = PlainContext.of(out, err);
    return new Main(
            surroundings,
            (clip, options, progress) -> {
              asked.add(options);
              String name = clip.getFileName().toString();
              if (name.startsWith("broken")) {
                return new ClipReport.Unreadable(name, "it is text", "give a video");
              }
              return name.startsWith("front") ? Sets.notMeasured(name) : told(name);
            })
        .run(args);
  }

  /** The truth with known errors; the third rep's fault is missed, the first has a false one. */
  private static ClipReport.Measured told(String name) {
    Truth truth = TruthReader.read(Path.of("..", "sample-clips", CLIP + ".truth.json"));
    ClipReport.Measured any = Sets.measured(name);
    List<RepResult> reps = new ArrayList<>();
    for (Truth.Scripted scripted : truth.reps()) {
      TrueRep rep = TrueRep.of(truth, scripted).orElseThrow();
      Map<Measure, Reading> bottom = new EnumMap<>(Measure.class);
      for (Measure measure : Measure.values()) {
        bottom.put(measure, Reading.missing(Gap.NOT_READ));
      }
      for (Scored scored : Scored.values()) {
        for (Measure measure : Measure.values()) {
          if (scored.column().equals(Optional.of(measure.jsonName()))) {
            boolean angle = scored.unit().equals("°");
            bottom.put(
                measure,
                Reading.of(
                    rep.values().get(scored) + (angle ? ANGLE_ERROR : LENGTH_ERROR),
                    angle ? 1.5 : 1));
          }
        }
      }
      int number = reps.size() + 1;
      if (number == 2) {
        bottom.put(Measure.REAR_KNEE_HEIGHT, Reading.missing(Gap.UNSEEN_AT_BOTTOM));
      }
      reps.add(
          new RepResult(
              number,
              new RepTimes(
                  rep.startS(), rep.bottomStartS(), rep.bottomS(), rep.bottomEndS(), rep.endS()),
              new TempoReading(
                  Reading.of(rep.values().get(Scored.LOWERING) + 0.1, 0.2),
                  Reading.of(rep.values().get(Scored.HOLD), 0.2),
                  Reading.of(rep.values().get(Scored.DRIVE) - 0.01, 0.2),
                  Reading.missing(Gap.NOT_READ)),
              bottom,
              new DriveReading(
                  Reading.of(1.04 * rep.values().get(Scored.DRIVE_SPEED), 0.1),
                  Reading.missing(Gap.NOT_READ)),
              false,
              new RepJudgement(number, List.of()),
              number == 1
                  ? List.of(
                      new Flag(FlagKind.WOBBLE, 2, 60, 2, 1, MeasureUnit.CENTIMETRES, 0.9),
                      new Flag(FlagKind.SHIN_OFF_TARGET, 2, 60, 2, 1, MeasureUnit.DEGREES, 0.9))
                  : List.of()));
    }
    SetUp was = any.set().setUp();
    SetUp setUp =
        new SetUp(
            Side.RIGHT,
            Side.RIGHT,
            true,
            SetUp.RearFoot.FLOOR,
            was.camera(),
            was.cmPerPx(),
            was.scaleSource(),
            was.cameraHold(),
            was.shownLegs(),
            List.of());
    return new ClipReport.Measured(
        any.clip(),
        Sets.set(
            setUp,
            any.set().target(),
            reps,
            Map.of(),
            Optional.empty(),
            new SetSummary(reps.size(), Optional.empty()),
            any.set().series()),
        List.of());
  }

  private void clip(String name) throws IOException {
    Files.copy(
        Path.of("..", "sample-clips", CLIP + ".truth.json"), folder.resolve(name + ".truth.json"));
    Files.writeString(folder.resolve(name + ".mp4"), "stands for a clip");
  }

  private String page() throws IOException {
    Path page = folder.resolve("accuracy.md");
    assertThat(run("accuracy", folder.toString(), "--out", page.toString())).isZero();
    return Files.readString(page);
  }

  @Test
  void knownErrorsAreScored() throws IOException {
    clip("one");
    String page = page();
    assertThat(page)
        .contains("| shin angle | ° | 3 | +0.50 | 0.50 | ≤ 1.00 | 0.50 | 1.50 | 100 % |")
        .contains("| knee past toe | cm | 3 | -2.00 | 2.00 | ≤ 1.00 | 2.00 | 1.00 | 0 % |")
        .contains("| lowering | s | 3 | +0.100 | 0.100 | ≤ 0.060 | 0.100 | 0.200 | 100 % |")
        .contains("| drive | s | 3 | -0.010 | 0.010 | ≤ 0.060 | 0.010 | 0.200 | 100 % |")
        .contains("| drive speed | % | 3 | +4.00 | 4.00 | ≤ 5.00 | 4.00 |")
        .contains("over 1 clip with 3 reps")
        .contains("Reps: 3 of 3 found, 0 false.")
        .contains("Flags: 0 found, 1 missed, 1 false on 2 clean reps.")
        .contains("rep 1: wobble is false")
        .contains("rep 3: shallow was missed")
        .contains("not measured: rear-knee height of rep 2")
        .contains("floor or bench is wrong")
        .contains("knee past toe 2.00 cm (goal ≤ 1.00, bias -2.00, 0 % inside ±)")
        .doesNotContain("shin-off-target");
    assertThat(out.toString()).contains("shin angle", "Reps: 3 of 3 found", "100 %");
    assertThat(err.toString()).isEmpty();
  }

  @Test
  void camerasOfAGridCountInTheirOwnTable() throws IOException {
    clip("one");
    Path grid = Files.createDirectories(folder.resolve("grid"));
    Path plain = folder.resolve("one.truth.json");
    String truth = Files.readString(plain);
    Files.writeString(
        grid.resolve("steep.truth.json"),
        truth.replaceFirst("\"camera\" *: *\\{", "\"camera\": {\"pitchDeg\": 13.0, "));
    Files.createFile(grid.resolve("steep.mp4"));
    Path page = folder.resolve("accuracy.md");
    assertThat(run("accuracy", folder.toString(), "--cameras", grid.toString(), "--out", "" + page))
        .isZero();
    assertThat(Files.readString(page))
        .contains("over 1 clip with 3 reps")
        .contains("1 clip with 1 body")
        .contains("| 10 to 16° | 0 to 4° | 3 / 3 | 0.50 (100 %) | 2.00 (0 %) |");
  }

  /**
   * Plain reps: shin 29°, 29° and 22°, knee 1.4, 1.2 and -4 cm past the toe, thigh 3°, 3° and 26°,
   * lowering 1.4 s, hold 1.1 s, drive 0.5 s; told half a degree and -2 cm off, with ± 1.5° and 1
   * cm.
   */
  @Test
  void verdictsAreHeldAgainstThoseOfTheTruth() throws IOException {
    clip("one");
    String page = page();
    assertThat(page)
        .contains("| shin: upright | rep | 3 | 3 | 0 | 0 | 0 | 100 % | ≥ 95 % |")
        .contains("| shin: over-toe | rep | 3 | 3 | 0 | 0 | 0 | 100 % | ≥ 95 % |")
        // Rep 3 is 1 cm off the band: its thigh settles it, but its knee does not count.
        .contains("|  | knee | 2 | 2 | 0 | 0 | 0 | 100 % | – |")
        .contains("| depth: full | rep | 3 | 3 | 0 | 0 | 0 | 100 % | ≥ 95 % |")
        .contains("| tempo: 4-2-X | rep | 3 | 3 | 0 | 0 | 0 | 100 % | ≥ 95 % |");
    assertThat(out.toString()).contains("Verdicts: 15 of 15 right against 6 targets");
  }

  @Test
  void aClipThatIsNotMeasuredHasNoRightVerdict() throws IOException {
    clip("front");
    clip("one");
    Path page = folder.resolve("accuracy.md");
    run("accuracy", folder.toString(), "--out", page.toString());
    assertThat(Files.readString(page))
        .contains("| depth: full | rep | 6 | 3 | 0 | 0 | 3 | 50 % | ≥ 95 % |")
        .contains("rep 1, depth: full: hit, the rep was not found");
  }

  @Test
  void thePageSaysOnWhichClipsItFlatters() throws IOException {
    clip("one");
    assertThat(page()).contains("begin with gym or plain. On those the figures flatter");
  }

  @Test
  void thePageNamesItsCommandAndNoPlace() throws IOException {
    clip("one");
    String page = page();
    assertThat(page)
        .contains("`shinline accuracy " + folder.getFileName() + " --model accurate`")
        .doesNotContain(folder.getParent().toString());
  }

  @Test
  void theSameClipsGiveTheSamePage() throws IOException {
    clip("one");
    clip("two");
    String first = page();
    assertThat(page()).isEqualTo(first);
    assertThat(first).contains("over 2 clips with 6 reps");
  }

  @Test
  void heightComesFromTheTruthUnlessToldOtherwise() throws IOException {
    clip("one");
    double height = TruthReader.read(folder.resolve("one.truth.json")).athleteHeightM();
    run("accuracy", folder.toString());
    run("accuracy", folder.toString(), "--no-height-from-truth", "--model", "quick");
    assertThat(asked.get(0).request().scale().athleteHeightM()).contains(height);
    assertThat(asked.get(1).request().scale().athleteHeightM()).isEmpty();
    assertThat(asked.get(1).model().word()).isEqualTo("full");
  }

  @Test
  void badClipsAndTruthsDoNotStopTheRest() throws IOException {
    clip("broken");
    clip("one");
    Files.writeString(folder.resolve("bad.truth.json"), "{}");
    clip("gone");
    Files.delete(folder.resolve("gone.mp4"));
    Path page = folder.resolve("accuracy.md");
    assertThat(run("accuracy", folder.toString(), "--out", page.toString())).isEqualTo(3);
    assertThat(err.toString())
        .contains("broken.mp4: it is text")
        .contains("bad.truth.json is no truth file")
        .contains("gone.mp4: there is a truth file, but no clip");
    assertThat(Files.readString(page))
        .contains("| drive speed | % | 3 | +4.00 | 4.00 | ≤ 5.00 | 4.00 |")
        .contains("over 1 clip with 3 reps")
        .contains("Not scored: bad.mp4; broken.mp4; gone.mp4.");
  }

  @Test
  void aClipThatIsNotMeasuredMissesAllItsReps() throws IOException {
    clip("front");
    clip("one");
    Path page = folder.resolve("accuracy.md");
    assertThat(run("accuracy", folder.toString(), "--out", page.toString())).isEqualTo(4);
    assertThat(Files.readString(page))
        .contains("Reps: 3 of 6 found, 0 false.")
        .contains("not measured: this is not a side view");
  }

  @Test
  void withoutAnyScoreAnOldPageStays() throws IOException {
    clip("broken");
    Path page = folder.resolve("accuracy.md");
    Files.writeString(page, "older");
    assertThat(run("accuracy", folder.toString(), "--out", page.toString())).isEqualTo(3);
    assertThat(Files.readString(page)).isEqualTo("older");
  }

  @Test
  void wrongUseIsSaidBeforeAnyWork() throws IOException {
    assertThat(run("accuracy")).isEqualTo(2);
    assertThat(run("accuracy", folder.toString())).isEqualTo(2);
    assertThat(err.toString()).contains("no truth file is in");
    assertThat(run("accuracy", folder.resolve("nowhere").toString())).isEqualTo(2);
    clip("one");
    String nowhere = folder.resolve("no").resolve("page.md").toString();
    assertThat(run("accuracy", folder.toString(), "--out", nowhere)).isEqualTo(2);
    assertThat(asked).isEmpty();
  }
}
