package shinline.cli.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.bytedeco.ffmpeg.global.avutil;
import org.bytedeco.javacv.FFmpegFrameGrabber;
import org.bytedeco.javacv.Frame;
import org.bytedeco.javacv.Java2DFrameConverter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.ResultSchema;
import shinline.cli.context.CommandContext;

/** {@code shinline photo} from end to end, in this process, on frames of the sample clips. */
class PhotoCommandTest {
  private static final Path SAMPLES = Path.of("..", "sample-clips");
  private static final ObjectMapper JSON = new ObjectMapper();

  /** The same places seen in a picture turned by a quarter, by other blocks of the same model. */
  private static final double TURNED_DEG = 1.5;

  /** Frames are decoded once. */
  private static final Map<String, Lowest> FRAMES = new ConcurrentHashMap<>();

  static {
    avutil.av_log_set_level(avutil.AV_LOG_ERROR);
  }

  @TempDir Path folder;

  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  /** The frame of a sample clip in which the hip is lowest, and its number. */
  private record Lowest(BufferedImage image, int frame, JsonNode truth) {
    static Lowest of(String clip) {
      return FRAMES.computeIfAbsent(clip, Lowest::read);
    }

    private static Lowest read(String clip) {
      try {
        JsonNode truth = JSON.readTree(SAMPLES.resolve(clip + ".truth.json").toFile());
        JsonNode height = truth.get("series").get("hipHeightCm");
        int low = 0;
        for (int i = 0; i < height.size(); i++) {
          low = height.get(i).asDouble() < height.get(low).asDouble() ? i : low;
        }
        return new Lowest(frame(SAMPLES.resolve(clip + ".mp4"), low), low, truth);
      } catch (IOException e) {
        throw new java.io.UncheckedIOException(e);
      }
    }

    private static BufferedImage frame(Path clip, int number) throws IOException {
      try (FFmpegFrameGrabber grabber = new FFmpegFrameGrabber(clip.toFile());
          Java2DFrameConverter convert = new Java2DFrameConverter()) {
        grabber.start();
        Frame frame = grabber.grabImage();
        for (int i = 0; i < number; i++) {
          frame = grabber.grabImage();
        }
        BufferedImage image = convert.convert(frame);
        BufferedImage own =
            new BufferedImage(image.getWidth(), image.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D g = own.createGraphics();
        g.drawImage(image, 0, 0, null);
        g.dispose();
        return own;
      }
    }

    String height() {
      return truth.get("athleteHeightM").asDouble() + "m";
    }

    double truth(String measure) {
      return truth.get("series").get(measure).get(frame).asDouble();
    }
  }

  private int run(Object... args) {
    CommandContext surroundings = PlainContext.of(out, err);
    return Main.standard(surroundings)
        .run(
            Stream.concat(Stream.of("photo"), Stream.of(args).map(String::valueOf))
                .toArray(String[]::new));
  }

  private Path picture(BufferedImage image, String name) throws IOException {
    Path file = folder.resolve(name);
    String format = name.endsWith(".png") ? "png" : "jpeg";
    assertThat(ImageIO.write(image, format, file.toFile())).isTrue();
    return file;
  }

  private static JsonNode json(Path file) throws IOException {
    String text = Files.readString(file);
    assertThat(ResultSchema.complaints(text)).isEmpty();
    return JSON.readTree(text);
  }

  private static double value(JsonNode posture, String measure) {
    return posture.get(measure).get("value").asDouble();
  }

  @ParameterizedTest
  @ValueSource(strings = {"gym1-bench-clean", "plain1-bench-shallow"})
  void theBottomOfASampleClipIsMeasuredWithinItsPlusMinus(String clip) throws IOException {
    Lowest lowest = Lowest.of(clip);
    Path photo = picture(lowest.image(), "bottom.png");
    Path results = folder.resolve("results");
    int code = run(photo, "--height", lowest.height(), "--target", "upright", "--out", results);
    assertThat(err.toString()).isEmpty();
    assertThat(code).isZero();
    JsonNode result = json(results.resolve("bottom-photo.json"));
    JsonNode setup = result.get("setup");
    for (String key : List.of("facing", "rearFoot")) {
      assertThat(setup.get(key)).as(key).isEqualTo(lowest.truth().get(key));
    }
    // One picture may leave it open which leg is the near one; then it says so, and how to tell it.
    String frontLeg = lowest.truth().get("frontLeg").asText();
    if (!setup.get("frontLeg").asText().equals(frontLeg)) {
      assertThat(setup.get("warnings").toString()).contains("--front");
      assertThat(
              run(
                  photo,
                  "--height",
                  lowest.height(),
                  "--target",
                  "upright",
                  "--front",
                  frontLeg,
                  "--out",
                  results))
          .isZero();
      result = json(results.resolve("bottom-photo.json"));
      assertThat(result.get("setup").get("frontLeg").asText()).isEqualTo(frontLeg);
      assertThat(result.get("setup").get("warnings").toString()).doesNotContain("--front");
    }
    JsonNode posture = result.get("posture");
    for (String measure :
        List.of(
            "shinDeg",
            "kneePastToeCm",
            "trunkLeanDeg",
            "thighDeg",
            "kneeFlexionDeg",
            "rearKneeHeightCm")) {
      double plusMinus = posture.get(measure).get("plusMinus").asDouble();
      assertThat(value(posture, measure))
          .as(measure)
          .isCloseTo(lowest.truth(measure), within(plusMinus));
      // A ± that holds everything tells nothing: a knee bends by more than a hundred degrees.
      assertThat(plusMinus).as(measure).isLessThan(10);
    }
    assertThat(posture.get("verdict").asText()).isEqualTo("miss");
    assertThat(posture.get("flags").get(0).get("kind").asText()).isEqualTo("shin-off-target");
    assertThat(result.get("reps")).isNull();
    assertThat(result.get("set")).isNull();
    assertThat(out.toString()).contains("Not as asked: shin", "Take care");
    BufferedImage drawn = ImageIO.read(results.resolve("bottom-photo.jpg").toFile());
    assertThat(drawn.getHeight()).isGreaterThan(300);
    assertThat(posture.get("image").asText()).isEqualTo("bottom-photo.jpg");
    String page = Files.readString(results.resolve("bottom-photo.html"));
    assertThat(page)
        .contains("default-src &#39;none&#39;", "data:image/jpeg;base64,", "not a diagnosis")
        .doesNotContain("<script", "http://", "https://");
  }

  @Test
  void theSamePictureGivesTheSameBytes() throws IOException {
    Path photo = picture(Lowest.of("plain1-bench-shallow").image(), "bottom.jpg");
    for (String results : List.of("one", "two")) {
      assertThat(run(photo, "--out", folder.resolve(results))).isZero();
    }
    for (String ending : List.of(".json", ".html", ".jpg")) {
      assertThat(folder.resolve("one").resolve("bottom-photo" + ending))
          .hasSameBinaryContentAs(folder.resolve("two").resolve("bottom-photo" + ending));
    }
  }

  @Test
  void anAthleteWhoLiesInThePictureIsTurned() throws IOException {
    Lowest lowest = Lowest.of("gym1-bench-clean");
    BufferedImage upright = lowest.image();
    BufferedImage lying =
        new BufferedImage(upright.getHeight(), upright.getWidth(), BufferedImage.TYPE_3BYTE_BGR);
    for (int y = 0; y < upright.getHeight(); y++) {
      for (int x = 0; x < upright.getWidth(); x++) {
        lying.setRGB(y, upright.getWidth() - 1 - x, upright.getRGB(x, y));
      }
    }
    Path results = folder.resolve("results");
    assertThat(
            run(
                picture(upright, "upright.png"),
                picture(lying, "lying.png"),
                "--out",
                results,
                "--no-report"))
        .isZero();
    JsonNode turned = json(results.resolve("lying-photo.json"));
    assertThat(turned.get("clip").get("rotationDeg").asInt()).isEqualTo(90);
    assertThat(turned.get("clip").get("widthPx").asInt()).isEqualTo(upright.getWidth());
    assertThat(turned.get("setup").get("warnings").toString()).contains("was lying");
    JsonNode posture = json(results.resolve("upright-photo.json")).get("posture");
    assertThat(value(turned.get("posture"), "shinDeg"))
        .isCloseTo(value(posture, "shinDeg"), within(TURNED_DEG));
  }

  @Test
  void eachPictureIsDoneAndTheWorstCodeCounts() throws IOException {
    Path good = picture(Lowest.of("plain1-bench-shallow").image(), "a good one.jpg");
    Path nobody = picture(new BufferedImage(400, 300, BufferedImage.TYPE_3BYTE_BGR), "nobody.png");
    Path text = Files.writeString(folder.resolve("text.jpg"), "no picture");
    Path results = folder.resolve("results");
    assertThat(run(text, good, nobody, "--out", results)).isEqualTo(3);
    assertThat(err.toString())
        .contains("text.jpg", "no picture this program knows", "Nobody was found");
    assertThat(results.resolve("text-photo.json")).doesNotExist();
    assertThat(json(results.resolve("a good one-photo.json")).get("posture").isObject()).isTrue();
    JsonNode not = json(results.resolve("nobody-photo.json"));
    assertThat(not.get("posture").isNull()).isTrue();
    assertThat(not.get("notMeasured").get("kind").asText()).isEqualTo("nobody");
    assertThat(Files.readString(results.resolve("nobody-photo.html"))).contains("What to do");
    assertThat(run(nobody, "--no-report")).isEqualTo(4);
  }

  @Test
  void resultsLieBesideThePictureWhereNothingElseIsAsked() throws IOException {
    Path photo = picture(Lowest.of("plain1-bench-shallow").image(), "bottom.jpg");
    assertThat(run(photo, "--blur-face")).isZero();
    assertThat(folder.resolve("bottom-shinline").resolve("photo.html")).exists();
    assertThat(folder.resolve("bottom-shinline").resolve("photo.jpg")).exists();
    assertThat(folder.resolve("bottom-shinline").resolve("photo.json")).doesNotExist();
  }

  @Test
  void wrongUseIsFoundBeforeAnythingIsOpened() {
    assertThat(run("a.jpg", "b.jpg", "--json", folder.resolve("x.json"))).isEqualTo(2);
    assertThat(run("a.jpg", "--front", "both")).isEqualTo(2);
    assertThat(run("a.jpg", "--pitch", "80")).isEqualTo(2);
    assertThat(run("a.jpg", "--height", "3m")).isEqualTo(2);
    assertThat(run("a.jpg", "--limit-pixels", "0")).isEqualTo(2);
    assertThat(run("one/a.jpg", "two/a.png", "--out", folder.resolve("o"))).isEqualTo(2);
    assertThat(run()).isEqualTo(2);
    assertThat(out.toString()).isEmpty();
    assertThat(folder.resolve("x.json")).doesNotExist();
  }

  @Test
  void aNameIsNoOrderToTheTerminal() throws IOException {
    Path odd = Files.writeString(folder.resolve("set\u001b[31m.jpg"), "no picture");
    assertThat(run(odd)).isEqualTo(3);
    assertThat(err.toString()).doesNotContain("\u001b").contains("set");
  }

  @Test
  void aResultNeverReplacesAPictureThatWasGiven() throws IOException {
    Path photo = picture(Lowest.of("plain1-bench-shallow").image(), "bottom.jpg");
    byte[] before = Files.readAllBytes(photo);
    assertThat(run(photo, "--json", photo)).isEqualTo(2);
    assertThat(Files.readAllBytes(photo)).isEqualTo(before);
    assertThat(Objects.requireNonNull(err.toString())).contains("was given");
  }
}
