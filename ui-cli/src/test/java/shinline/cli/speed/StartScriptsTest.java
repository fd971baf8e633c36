package shinline.cli.speed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StartScriptsTest {
  private static final Pattern LAST_LINE =
      Pattern.compile("^(?:exec \"\\$java\"|\"%JAVA%\") -X.*$", Pattern.MULTILINE);

  private static final Pattern OPTION = Pattern.compile("-[XD]\\S+");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "shinline",
        "shinline.cmd",
        "ui-cli/src/app/shinline",
        "ui-cli/src/app/shinline.cmd"
      })
  void allStartJavaAsItIsMeasured(String script) throws IOException {
    List<String> lines =
        LAST_LINE
            .matcher(Files.readString(Path.of("..").resolve(script)))
            .results()
            .map(MatchResult::group)
            .toList();
    assertThat(lines).hasSize(1);
    assertThat(OPTION.matcher(lines.get(0)).results().map(MatchResult::group).toList())
        .isEqualTo(SpeedRun.JAVA_OPTIONS);
  }
}
