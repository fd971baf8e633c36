package shinline.cli.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.Sets;
import shinline.cli.calibration.CalibrationFile;
import shinline.cli.check.CheckOptions;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ClipReport;
import shinline.metrics.analysis.ClipObservations;
import shinline.metrics.analysis.SetAnalysis;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.calibration.CalibrationSheet;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.RawPoint;
import shinline.metrics.track.RawPose;
import shinline.metrics.track.RawSighting;
import shinline.metrics.track.RawTrack;
import shinline.metrics.track.Side;
import shinline.vision.pose.PoseModel;
import shinline.vision.scene.CameraPath;

/** A pose model whose landmarks are the true joint centres of the sample clips, moved at will. */
class CalibrateCommandTest {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<String> CLIPS =
      List.of("gym1-bench-clean", "gym4-floor-portrait-rotated", "plain1-bench-shallow");

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private double ankleTooHighPx;
  private double ankleOffPx;

  private int run(Object... args) {
    CommandContext context = PlainContext.of(out, err);
    String[] words = new String[args.length];
    for (int i = 0; i < args.length; i++) {
      words[i] = args[i].toString();
    }
    return new Main(context, (clip, options, progress) -> seen(clip, options)).run(words);
  }

  private ClipReport seen(Path clip, CheckOptions options) {
    String name = clip.getFileName().toString();
    if (name.startsWith("broken")) {
      return new ClipReport.Unreadable(name, "it is text", "give a video");
    }
    ClipReport.Footage footage =
        new ClipReport.Footage(
            track(clip.resolveSibling(name.replace(".mp4", ".truth.json"))),
            options.request(),
            shinline.vision.clip.ClipPart.WHOLE,
            ClipObservations.none());
    return new SetAnalysis(CalibrationFile.shipped(options.model()))
        .measure(footage.track(), footage.request(), footage.seen())
        .fold(
            measured ->
                new ClipReport.Measured(
                    Sets.facts(name),
                    measured.set(),
                    List.of(),
                    CameraPath.still(),
                    Optional.of(footage),
                    Optional.empty()),
            not -> {
              throw new AssertionError(not.why().toString());
            });
  }

  private RawTrack track(Path truthFile) {
    Truth truth = TruthReader.read(truthFile);
    JsonNode root = json(truthFile);
    int height = root.path("heightPx").asInt();
    Side front = truth.frontLegLeft() ? Side.LEFT : Side.RIGHT;
    Side near = truth.frontLegNear() ? front : front.other();
    // To one side in one clip and to the other in the next: no offset makes both good.
    double off = ankleOffPx * (truth.clip().startsWith("gym1") ? 1 : -1);
    List<RawPose> poses = new ArrayList<>();
    for (int i = 0; i < truth.timeS().length; i += 2) {
      Map<RawPoint, RawSighting> points = new EnumMap<>(RawPoint.class);
      for (BodyPoint point : BodyPoint.values()) {
        Truth.Pixels at = truth.pixels().get(point);
        double up = point == BodyPoint.FRONT_ANKLE ? ankleTooHighPx : 0;
        double aside = point == BodyPoint.FRONT_ANKLE ? off : 0;
        // The far knee is behind the near leg at times, and the model knows.
        boolean far = name(point, front, near).name().startsWith(near.other().name());
        points.put(
            name(point, front, near),
            new RawSighting(
                at.x()[i] + aside,
                height - 1 - at.y()[i] + up,
                far && point.name().endsWith("KNEE") ? 0.8 : 0.95));
      }
      poses.add(new RawPose(i, truth.timeS()[i], points));
    }
    return new RawTrack(root.path("widthPx").asInt(), height, poses);
  }

  private static RawPoint name(BodyPoint point, Side front, Side near) {
    String[] parts = point.name().split("_");
    Side side =
        switch (parts[0]) {
          case "FRONT" -> front;
          case "REAR" -> front.other();
          case "NEAR" -> near;
          default -> near.other();
        };
    return RawPoint.valueOf(side.name() + "_" + parts[1]);
  }

  private static JsonNode json(Path file) {
    try {
      return JSON.readTree(file.toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void clips() throws IOException {
    for (String clip : CLIPS) {
      Files.copy(
          Path.of("..", "sample-clips", clip + ".truth.json"),
          folder.resolve(clip + ".truth.json"));
      Files.writeString(folder.resolve(clip + ".mp4"), "stands for a clip");
    }
  }

  private Calibration fitted(String name) throws IOException {
    Path file = folder.resolve(name);
    assertThat(run("calibrate", folder, "--out", file, "--when", "2026-11-26"))
        .as(err.toString())
        .isZero();
    return JSON.readValue(file.toFile(), CalibrationSheet.class).calibration();
  }

  /** Landmarks at the joint centres need no offsets; the toe's ahead is kept. */
  @Test
  void landmarksAtTheJointCentresNeedNoOffsets() throws IOException {
    clips();
    Calibration fitted = fitted("fit.json");
    for (CalibrationKey key : CalibrationKey.values()) {
      if (key.word().startsWith("offset.") && key != CalibrationKey.OFFSET_FRONT_TOE_AHEAD) {
        // A thousandth of the chain, 1.3 mm, is what smoothing and gap filling leave.
        assertThat(fitted.value(key)).as(key.word()).isCloseTo(0, within(0.001));
      }
    }
    assertThat(fitted.value(CalibrationKey.OFFSET_FRONT_TOE_AHEAD))
        .isEqualTo(
            CalibrationFile.shipped(PoseModel.HEAVY).value(CalibrationKey.OFFSET_FRONT_TOE_AHEAD));
  }

  @Test
  void anAnkleSeenTooHighIsBroughtDown() throws IOException {
    clips();
    ankleTooHighPx = 5;
    assertThat(fitted("fit.json").value(CalibrationKey.OFFSET_FRONT_ANKLE_ALONG))
        .isBetween(-0.03, -0.01);
  }

  /** An ankle 5 px aside turns a shank of some 110 px by 2.6 degrees. */
  @Test
  void whatNoOffsetMakesGoodWidensTheInterval() throws IOException {
    clips();
    double good = fitted("good.json").value(CalibrationKey.INTERVAL_SHIN_BODY);
    ankleOffPx = 5;
    double bad = fitted("bad.json").value(CalibrationKey.INTERVAL_SHIN_BODY);
    assertThat(good).isLessThan(0.5);
    assertThat(1.96 * bad).isBetween(2.0, 8.0);
  }

  /** An ankle a good way up the shin is no habit of a pose model. */
  @Test
  void aValueThatIsNotSensibleIsNotTaken() throws IOException {
    clips();
    ankleTooHighPx = 75;
    Calibration fitted = fitted("fit.json");
    assertThat(out.toString()).contains("Not taken: offset.front-ankle.along would be -");
    assertThat(fitted.told(CalibrationKey.OFFSET_FRONT_ANKLE_ALONG))
        .isEqualTo(
            CalibrationFile.shipped(PoseModel.HEAVY).told(CalibrationKey.OFFSET_FRONT_ANKLE_ALONG));
  }

  /** Only gym4 and plain1 have shallow reps; nothing here tells of a heel. */
  @Test
  void limitsAreFittedWhereFaultyRepsTellThem() throws IOException {
    clips();
    Calibration fitted = fitted("fit.json");
    assertThat(fitted.told(CalibrationKey.SHALLOW_LIMIT).provenance().clips()).isEqualTo(CLIPS);
    assertThat(fitted.told(CalibrationKey.SHALLOW_LIMIT).provenance().when())
        .hasToString("2026-11-26");
    assertThat(fitted.value(CalibrationKey.SHALLOW_LIMIT)).isBetween(0.5, 0.97);
    assertThat(fitted.told(CalibrationKey.HEEL_RISE_LIMIT))
        .isEqualTo(CalibrationFile.shipped(PoseModel.HEAVY).told(CalibrationKey.HEEL_RISE_LIMIT));
    assertThat(out.toString())
        .contains("| shallow | share |")
        .contains("| one clip | 3 |")
        .contains("| one athlete | 3 |")
        .doesNotContain("| heel-rise |");
  }

  @Test
  void theSameFolderGivesTheSameBytes() throws IOException {
    clips();
    assertThat(run("calibrate", folder, "--out", folder.resolve("a.json"))).isZero();
    assertThat(run("calibrate", folder, "--out", folder.resolve("b.json"))).isZero();
    assertThat(folder.resolve("a.json")).hasSameBinaryContentAs(folder.resolve("b.json"));
  }

  @Test
  void anAthleteIsToldByNameBeforeHeight() throws IOException {
    clips();
    for (String clip : CLIPS.subList(0, 2)) {
      Path file = folder.resolve(clip + ".truth.json");
      Files.writeString(file, ((ObjectNode) json(file)).put("athlete", "Ada").toString());
    }
    fitted("fit.json");
    assertThat(out.toString()).contains("| one clip | 3 |").contains("| one athlete | 2 |");
  }

  @Test
  void theShippedFileIsNotWrittenOver() throws IOException {
    clips();
    Path shipped = folder.resolve("src/main/resources/shinline/metrics/calibration");
    Files.createDirectories(shipped);
    assertThat(run("calibrate", folder, "--out", shipped.resolve("heavy.json"))).isEqualTo(2);
    assertThat(err.toString()).contains("not written over");
    assertThat(shipped).isEmptyDirectory();
  }

  @Test
  void nothingIsWrittenWithoutAClip() throws IOException {
    Files.copy(
        Path.of("..", "sample-clips", CLIPS.get(0) + ".truth.json"),
        folder.resolve("broken.truth.json"));
    Files.writeString(folder.resolve("broken.mp4"), "text");
    Path file = folder.resolve("fit.json");
    assertThat(run("calibrate", folder, "--out", file)).isEqualTo(3);
    assertThat(err.toString()).contains("broken.mp4").contains("nothing was fitted");
    assertThat(file).doesNotExist();
  }

  @Test
  void aDayThatIsNoneIsWrongUse() {
    assertThat(run("calibrate", folder, "--out", folder.resolve("x"), "--when", "today"))
        .isEqualTo(2);
    assertThat(err.toString().toLowerCase(Locale.ROOT)).contains("when");
  }
}
