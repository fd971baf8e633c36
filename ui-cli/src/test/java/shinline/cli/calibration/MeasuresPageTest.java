package shinline.cli.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.calibration.CalibrationUnit;
import shinline.metrics.fault.FlagKind;
import shinline.vision.pose.PoseModel;

/** Pages of docs tell calibrated values; a comment behind each names which one it is. */
class MeasuresPageTest {
  private static final Pattern MARKED =
      Pattern.compile("([0-9.]+)( %|°| s| cm| times| a second)<!-- ([a-z.-]+) -->");

  private static final Pattern MARK = Pattern.compile("<!-- [a-z-]+[.][a-z.-]+ -->");

  private static String page() throws IOException {
    return Files.readString(Path.of("..", "docs", "measures.md"));
  }

  private static String pages() throws IOException {
    try (Stream<Path> files = Files.list(Path.of("..", "docs"))) {
      StringBuilder all = new StringBuilder();
      for (Path file : files.filter(f -> f.toString().endsWith(".md")).sorted().toList()) {
        all.append(Files.readString(file));
      }
      return all.toString();
    }
  }

  @Test
  void whatItTellsIsWhatIsShipped() throws IOException {
    Calibration shipped = CalibrationFile.shipped(PoseModel.HEAVY);
    String pages = pages();
    Matcher marked = MARKED.matcher(pages);
    int found = 0;
    while (marked.find()) {
      found++;
      String word = marked.group(3);
      CalibrationKey key = CalibrationKey.of(word).orElseThrow(() -> new AssertionError(word));
      double share = key.unit() == CalibrationUnit.SHARE ? 100 : 1;
      String unit = key.unit() == CalibrationUnit.SHARE ? "%" : key.unit().symbol();
      assertThat(marked.group(2).strip()).as(word).isEqualTo(unit);
      assertThat(Double.parseDouble(marked.group(1)))
          .as(word)
          .isCloseTo(share * shipped.value(key), within(1e-9));
    }
    assertThat(found).isEqualTo((int) MARK.matcher(pages).results().count()).isPositive();
  }

  @Test
  void everyKindOfFlagTellsItsLimit() throws IOException {
    Set<FlagKind> untold = EnumSet.noneOf(FlagKind.class);
    for (FlagKind kind : FlagKind.values()) {
      boolean told =
          kind.limitKey().isEmpty()
              || page().contains("<!-- " + kind.limitKey().get().word() + " -->");
      if (!told) {
        untold.add(kind);
      }
    }
    assertThat(untold).isEmpty();
  }
}
