package shinline.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.ExitCode;
import shinline.vision.clip.ClipLimits;

/** Every command that reads clips is told how much one may ask of the computer. */
class LimitOptionsTest {
  private static final String CLIP = "plain1-bench-shallow";

  @TempDir Path folder;

  private final StringWriter err = new StringWriter();
  private final List<ClipLimits> asked = new ArrayList<>();

  @BeforeEach
  void aClipAndItsTruth() throws IOException {
    String truth = CLIP + ".truth.json";
    Files.copy(Path.of("..", "sample-clips", truth), folder.resolve(truth));
    Files.writeString(folder.resolve(CLIP + ".mp4"), "a clip");
  }

  private int run(String command, String... limits) {
    CommandContext surroundings = PlainContext.of(new StringWriter(), err);
    Main main =
        new Main(
            surroundings,
            (clip, options, progress) -> {
              asked.add(options.limits());
              return new ClipReport.Unreadable(CLIP + ".mp4", "none", "none");
            });
    Stream<String> words =
        Arrays.stream(command.split(" "))
            .map(w -> w.replace("FOLDER", folder.toString()).replace("CLIP", CLIP + ".mp4"));
    return main.run(Stream.concat(words, Arrays.stream(limits)).toArray(String[]::new));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "check FOLDER/CLIP",
        "accuracy FOLDER",
        "calibrate FOLDER --out FOLDER/fit.json",
        "session FOLDER --record FOLDER/record"
      })
  void limitsReachTheClip(String command) {
    run(command, "--limit-length", "2", "--limit-gap", "3", "--limit-pixels", "4");
    run(command);
    assertThat(asked).containsExactly(new ClipLimits(120, 3, 4_000_000), wide());
  }

  /** The defaults of the options, which are the usual limits but for the rounding of pixels. */
  private static ClipLimits wide() {
    return new ClipLimits(ClipLimits.USUAL.longestS(), ClipLimits.USUAL.longestGapS(), 67_000_000);
  }

  @ParameterizedTest
  @ValueSource(strings = {"check FOLDER/CLIP", "accuracy FOLDER", "session FOLDER"})
  void anImpossibleLimitIsRefused(String command) {
    assertThat(run(command, "--limit-gap", "0")).isEqualTo(ExitCode.USAGE.number());
    assertThat(err.toString()).contains("--limit-gap must be 0.1 to 600, was 0.0", "--help");
    assertThat(asked).isEmpty();
  }
}
