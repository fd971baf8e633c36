package shinline.cli.photo;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.bytedeco.javacv.Java2DFrameConverter;
import org.bytedeco.javacv.OpenCVFrameConverter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.check.PhotoCheck;
import shinline.cli.check.PhotoOptions;
import shinline.cli.outcome.PhotoReport;
import shinline.metrics.analysis.SetRequest;
import shinline.metrics.result.Measure;
import shinline.metrics.result.PostureResult;
import shinline.metrics.target.Target;
import shinline.vision.clip.Clip;
import shinline.vision.clip.ClipLimits;
import shinline.vision.clip.ClipOpening;
import shinline.vision.clip.ClipOptions;
import shinline.vision.clip.ClipReader;
import shinline.vision.clip.Frame;
import shinline.vision.pose.PoseModel;

/**
 * How exact a posture in a still picture is, over folders of clips with truth: of the first and the
 * last rep of each clip the frame with the lowest hip, as JPEG and as PNG. {@code
 * -Dshinline.photo.clips=FOLDER:FOLDER -Dtest=PhotoAccuracy} runs it; with {@code
 * -Dshinline.docs=true} the table of docs/photo.md is written anew.
 */
@EnabledIfSystemProperty(named = "shinline.photo.clips", matches = ".+")
class PhotoAccuracy {
  private static final Path PAGE = Path.of("..", "docs", "photo.md");
  private static final Path DRAFT = Path.of("target", "photo-accuracy.md");
  private static final Pattern TABLE =
      Pattern.compile(
          "(<!-- begin: figures, made by PhotoAccuracy -->\n)(.*?)(<!-- end -->)", Pattern.DOTALL);
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final List<Measure> SCORED =
      List.of(
          Measure.SHIN,
          Measure.KNEE_PAST_TOE,
          Measure.TRUNK_LEAN,
          Measure.THIGH,
          Measure.KNEE_FLEXION,
          Measure.REAR_KNEE_HEIGHT);

  @TempDir Path folder;

  /** Errors of one measure, and how many lay inside their ±. */
  private static final class Score {
    private final List<Double> errors = new ArrayList<>();
    private final List<Double> plusMinus = new ArrayList<>();
    private int inside;

    void add(double error, double within) {
      errors.add(Math.abs(error));
      plusMinus.add(within);
      inside += Math.abs(error) <= within ? 1 : 0;
    }

    String row(Measure measure) {
      Collections.sort(errors);
      int n = errors.size();
      return String.format(
          Locale.ROOT,
          "| `%s` | %d | %.2f | %.2f | %.1f | %.0f %% |%n",
          measure.jsonName(),
          n,
          errors.stream().mapToDouble(Double::doubleValue).average().orElse(0),
          errors.get((int) Math.ceil(0.95 * n) - 1),
          plusMinus.stream().mapToDouble(Double::doubleValue).average().orElse(0),
          100.0 * inside / n);
    }
  }

  /** Everything of one folder of clips. */
  private static final class Tally {
    private final Map<Measure, Score> scores = new TreeMap<>();
    private int pictures;
    private int refused;
    private int setUps;

    void add(PhotoReport report, JsonNode truth, int frame) {
      pictures++;
      Optional<PostureResult> posture =
          report.fold(m -> Optional.of(m.posture()), n -> Optional.empty(), u -> Optional.empty());
      if (posture.isEmpty()) {
        refused++;
        return;
      }
      setUps += sameSetUp(posture.get(), truth) ? 1 : 0;
      for (Measure measure : SCORED) {
        JsonNode is = truth.get("series").path(measure.jsonName()).path(frame);
        if (is.isNumber()) {
          posture
              .get()
              .at(measure)
              .measured()
              .ifPresent(
                  m ->
                      scores
                          .computeIfAbsent(measure, k -> new Score())
                          .add(m.value() - is.asDouble(), m.plusMinus()));
        }
      }
    }

    private static boolean sameSetUp(PostureResult posture, JsonNode truth) {
      var setUp = posture.setUp();
      return word(setUp.facing()).equals(truth.get("facing").asText())
          && word(setUp.frontLeg()).equals(truth.get("frontLeg").asText())
          && setUp.frontLegNearCamera() == truth.get("frontLegNearCamera").asBoolean()
          && word(setUp.rearFoot()).equals(truth.get("rearFoot").asText());
    }

    private static String word(Enum<?> kind) {
      return kind.name().toLowerCase(Locale.ROOT);
    }

    String page(String name) {
      StringBuilder page = new StringBuilder();
      page.append(
          String.format(
              Locale.ROOT,
              "%nFolder `%s`: %d pictures, %d not measured; facing, front leg and rear foot right in %d.%n%n",
              name,
              pictures,
              refused,
              setUps));
      page.append("| measure | pictures | mean absolute error | 95 % | mean ± | inside ± |\n");
      page.append("|---|---|---|---|---|---|\n");
      scores.forEach((measure, score) -> page.append(score.row(measure)));
      return page.toString();
    }
  }

  @Test
  void isToldByFramesWithTruth() throws IOException {
    StringBuilder page = new StringBuilder();
    try (PhotoCheck check = new PhotoCheck()) {
      for (String name : System.getProperty("shinline.photo.clips").split(File.pathSeparator)) {
        Tally tally = new Tally();
        for (Path clip : clips(Path.of(name))) {
          score(clip, check, tally);
        }
        assertThat(tally.pictures).isPositive();
        page.append(tally.page(String.valueOf(Path.of(name).getFileName())));
      }
    }
    page.append('\n');
    Files.writeString(DRAFT, page);
    if (Boolean.getBoolean("shinline.docs")) {
      String text = Files.readString(PAGE);
      Matcher place = TABLE.matcher(text);
      assertThat(place.find()).isTrue();
      Files.writeString(
          PAGE, text.substring(0, place.start(2)) + page + text.substring(place.end(2)));
    }
  }

  private static List<Path> clips(Path clips) throws IOException {
    try (Stream<Path> files = Files.list(clips)) {
      return files.filter(f -> f.toString().endsWith(".mp4")).sorted().toList();
    }
  }

  private void score(Path clip, PhotoCheck check, Tally tally) throws IOException {
    String stem = clip.getFileName().toString().replace(".mp4", "");
    JsonNode truth = JSON.readTree(clip.resolveSibling(stem + ".truth.json").toFile());
    int last = truth.get("reps").size() - 1;
    SetRequest request =
        SetRequest.of(Target.none()).withAthleteHeightM(truth.get("athleteHeightM").asDouble());
    PhotoOptions options =
        new PhotoOptions(request, PoseModel.HEAVY, Optional.empty(), ClipLimits.USUAL.mostPixels());
    for (int rep : last == 0 ? List.of(0) : List.of(0, last)) {
      int frame = lowest(truth, truth.get("reps").get(rep));
      Path photo = folder.resolve(stem + rep + (rep == 0 ? ".jpeg" : ".png"));
      assertThat(ImageIO.write(frame(clip, frame), rep == 0 ? "jpeg" : "png", photo.toFile()))
          .isTrue();
      tally.add(check.check(photo, options), truth, frame);
      Files.delete(photo);
    }
  }

  private static int lowest(JsonNode truth, JsonNode rep) {
    JsonNode times = truth.get("series").get("timeS");
    JsonNode heights = truth.get("series").get("hipHeightCm");
    int low = -1;
    for (int i = 0; i < times.size(); i++) {
      double t = times.get(i).asDouble();
      boolean inside = t >= rep.get("startS").asDouble() && t <= rep.get("endS").asDouble();
      if (inside && (low < 0 || heights.get(i).asDouble() < heights.get(low).asDouble())) {
        low = i;
      }
    }
    return low;
  }

  private static BufferedImage frame(Path file, int number) {
    ClipOpening opening =
        ClipReader.standard().open(file, ClipOptions.defaults(), stamp -> stamp.index() == number);
    try (Clip clip = ((ClipOpening.Opened) opening).clip();
        OpenCVFrameConverter.ToMat mats = new OpenCVFrameConverter.ToMat();
        Java2DFrameConverter images = new Java2DFrameConverter()) {
      Frame frame = clip.next().orElseThrow();
      BufferedImage shown = images.convert(mats.convert(frame.image()));
      BufferedImage own =
          new BufferedImage(shown.getWidth(), shown.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
      own.getRaster().setRect(shown.getRaster());
      return own;
    }
  }
}
