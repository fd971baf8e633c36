package shinline.cli.accuracy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.ResultSchema;
import shinline.cli.context.CommandContext;

/**
 * The shipped clips through the shipped command, by the shipped model, against what was filmed. A
 * part of each clip only, so that the build stays quick; docs/accuracy.md has them whole.
 */
class SampleClipsTest {
  private static final Path SAMPLES = Path.of("..", "sample-clips");

  /** A part of a clip: the reps it holds whole. */
  private enum Part {
    CLEAN("gym1-bench-clean", "0s", "6.8s", 1, 1),
    ROTATED("gym4-floor-portrait-rotated", "0s", "4.95s", 1, 1),
    SHALLOW("plain1-bench-shallow", "4.5s", "13.8s", 2, 3);

    private final String clip;
    private final String from;
    private final String to;
    private final int firstRep;
    private final int lastRep;

    Part(String clip, String from, String to, int firstRep, int lastRep) {
      this.clip = clip;
      this.from = from;
      this.to = to;
      this.firstRep = firstRep;
      this.lastRep = lastRep;
    }

    double seconds() {
      return Double.parseDouble(to.replace("s", "")) - Double.parseDouble(from.replace("s", ""));
    }

    Truth truth() {
      return TruthReader.read(SAMPLES.resolve(clip + ".truth.json"));
    }
  }

  /**
   * Frames that the pose model may look at; it does so at half of them and more:
   * docs/decisions/0015-looks-where-the-pace-changes.md.
   */
  private static final double FRAMES_A_SECOND = 15;

  /** A ± is told for 95 values of 100: the others are hardly farther off. */
  private static final double PLUS_MINUS_TIMES = 1.25;

  @TempDir Path folder;

  /** What one run of a part wrote: looking takes seconds, so that no part is looked at in vain. */
  private static final Map<Part, Map<String, byte[]>> RUN = new EnumMap<>(Part.class);

  private Map<String, byte[]> once(Part part) throws IOException {
    Map<String, byte[]> before = RUN.get(part);
    if (before != null) {
      return before;
    }
    Map<String, byte[]> written = check(part, folder.resolve("once"));
    RUN.put(part, written);
    return written;
  }

  /** Runs the command and gives every file that it wrote, by name. */
  private Map<String, byte[]> check(Part part, Path to) throws IOException {
    StringWriter err = new StringWriter();
    CommandContext context = PlainContext.of(new StringWriter(), err);
    int code =
        Main.standard(context)
            .run(
                "check",
                SAMPLES.resolve(part.clip + ".mp4").toString(),
                "--height",
                100 * part.truth().athleteHeightM() + "cm",
                "--from",
                part.from,
                "--to",
                part.to,
                "--out",
                to.toString());
    assertThat(code).as(err.toString()).isZero();
    Map<String, byte[]> written = new TreeMap<>();
    try (Stream<Path> files = Files.walk(to)) {
      // A hidden file tells which run the others are of.
      for (Path file :
          files
              .filter(f -> Files.isRegularFile(f) && !f.getFileName().toString().startsWith("."))
              .toList()) {
        written.put(to.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return written;
  }

  private static String text(Map<String, byte[]> written, String name) {
    assertThat(written).containsKey(name);
    return new String(written.get(name), StandardCharsets.UTF_8);
  }

  /**
   * Every told value holds the truth within its own ± or little more; the set-up and the faults are
   * the true.
   */
  @ParameterizedTest
  @EnumSource(Part.class)
  void whatIsToldIsWhatWasFilmed(Part part) throws IOException {
    Map<String, byte[]> written = once(part);
    String json = text(written, part.clip + ".json");
    assertThat(ResultSchema.complaints(json)).isEmpty();
    JsonNode result = new ObjectMapper().readTree(json);
    Truth truth = part.truth();
    JsonNode filmed =
        new ObjectMapper().readTree(SAMPLES.resolve(part.clip + ".truth.json").toFile());
    for (String fact : List.of("facing", "frontLeg", "frontLegNearCamera", "rearFoot")) {
      assertThat(result.at("/setup/" + fact)).as(fact).isEqualTo(filmed.get(fact));
    }
    assertThat(result.at("/clip/widthPx")).isEqualTo(filmed.get("widthPx"));
    assertThat(result.at("/clip/heightPx")).isEqualTo(filmed.get("heightPx"));
    assertThat(result.get("reps")).hasSize(part.lastRep - part.firstRep + 1);
    List<String> outside = new ArrayList<>();
    for (int k = 0; k < result.get("reps").size(); k++) {
      JsonNode told = result.get("reps").get(k);
      TrueRep is = TrueRep.of(truth, truth.reps().get(part.firstRep - 1 + k)).orElseThrow();
      // An edge is told as exactly as the phases that it parts.
      assertThat(told.get("startS").asDouble())
          .isCloseTo(is.startS(), within(plusMinus(told.at("/tempo/loweringS"))));
      assertThat(told.get("endS").asDouble())
          .isCloseTo(is.endS(), within(plusMinus(told.at("/tempo/driveS"))));
      for (Scored scored : is.values().keySet()) {
        JsonNode value = told.at(pointer(scored));
        double off = value.get("value").asDouble() - is.values().get(scored);
        if (Math.abs(off) > PLUS_MINUS_TIMES * plusMinus(value)) {
          outside.add("rep %d %s %+.2f %s".formatted(k + 1, scored, off, value));
        }
      }
      TreeSet<String> flags = new TreeSet<>();
      told.get("flags").forEach(flag -> flags.add(flag.get("kind").asText()));
      // As docs/accuracy.md counts: nothing on a clean rep, and of another all that was put in.
      if (is.faults().isEmpty()) {
        assertThat(flags).as("a clean rep %d", k + 1).isEmpty();
      } else {
        assertThat(flags).as("faults of rep %d", k + 1).containsAll(is.faults());
      }
    }
    assertThat(outside).isEmpty();
    // One row a look, one a rep, each with a heading.
    double frames = FRAMES_A_SECOND * part.seconds();
    assertThat((double) text(written, part.clip + ".csv").lines().count())
        .isBetween(frames / 2, frames + 3);
    assertThat(text(written, part.clip + "-reps.csv").lines())
        .hasSize(part.lastRep - part.firstRep + 2);
    assertThat(text(written, part.clip + ".html").strip()).endsWith("</html>");
  }

  private static String pointer(Scored scored) {
    return switch (scored) {
      case LOWERING -> "/tempo/loweringS";
      case HOLD -> "/tempo/holdS";
      case DRIVE -> "/tempo/driveS";
      case DRIVE_SPEED -> "/drive/meanSpeedMps";
      case BAR_SPEED -> "/bar/meanSpeedMps";
      default -> "/atBottom/" + scored.column().orElseThrow();
    };
  }

  private static double plusMinus(JsonNode told) {
    return told.get("plusMinus").asDouble();
  }

  /** JSON, both tables, the page with its pictures. */
  @Test
  void theSameClipTwiceGivesTheSameBytes() throws IOException {
    Map<String, byte[]> once = once(Part.ROTATED);
    Map<String, byte[]> twice = check(Part.ROTATED, folder.resolve("twice"));
    assertThat(once.keySet())
        .contains(
            Part.ROTATED.clip + ".json",
            Part.ROTATED.clip + ".csv",
            Part.ROTATED.clip + "-reps.csv",
            Part.ROTATED.clip + ".html");
    assertThat(twice.keySet()).isEqualTo(once.keySet());
    once.forEach((name, bytes) -> assertThat(twice.get(name)).as(name).isEqualTo(bytes));
  }
}
