package shinline.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shinline.cli.Main;
import shinline.cli.PlainContext;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.ExitCode;
import shinline.metrics.target.DepthTarget;
import shinline.metrics.target.ShinPreset;
import shinline.metrics.target.Target;

class TargetOptionTest {
  @TempDir Path folder;

  private final StringWriter err = new StringWriter();
  private final List<Target> asked = new ArrayList<>();

  private int check(String target) {
    CommandContext surroundings = PlainContext.of(new StringWriter(), err);
    Main main =
        new Main(
            surroundings,
            (clip, options, progress) -> {
              asked.add(options.request().target());
              return new ClipReport.Unreadable("clip.mp4", "none", "none");
            });
    return main.run("check", "clip.mp4", "--target", target);
  }

  private String file(String name, String yaml) throws IOException {
    return Files.writeString(folder.resolve(name), yaml).toString();
  }

  @Test
  void aShinWordIsAPreset() {
    assertThat(check("past-toe")).isEqualTo(ExitCode.UNREADABLE.number());
    assertThat(asked).containsExactly(Target.preset(ShinPreset.PAST_TOE));
  }

  @Test
  void aFileIsRead() throws IOException {
    check(file("day.yaml", "depth: full"));
    check(file("no-ending", "depth: full"));
    assertThat(asked).hasSize(2).allMatch(t -> t.depth().equals(DepthTarget.full()));
  }

  @Test
  void everyProblemOfAFileIsShownAndNothingIsMeasured() throws IOException {
    int code = check(file("day.yaml", "sihn: upright\ntempo: fast\n"));
    assertThat(code).isEqualTo(ExitCode.USAGE.number());
    assertThat(asked).isEmpty();
    assertThat(err.toString())
        .contains("  day.yaml line 1: unknown field \"sihn\"; known here: shin, depth")
        .contains("  day.yaml line 2, tempo: is not a tempo: \"fast\"; write lowering-hold")
        .doesNotContain("Exception");
  }

  @Test
  void aMissingFileAndAMistypedWordAreToldApart() {
    assertThat(check("none.yaml")).isEqualTo(ExitCode.USAGE.number());
    assertThat(err.toString()).contains("none.yaml: there is no such file");
    assertThat(check("uprihgt")).isEqualTo(ExitCode.USAGE.number());
    assertThat(err.toString()).contains("'uprihgt' is no shin target; choose upright, over-toe");
  }

  @Test
  void aTargetThatCouldBeNeitherIsWrongUse() {
    for (String odd : List.of("", "a\u0000b", "/", "..")) {
      assertThat(check(odd)).isEqualTo(ExitCode.USAGE.number());
    }
    assertThat(err.toString()).doesNotContain("Exception").doesNotContain("inside the program");
  }
}
