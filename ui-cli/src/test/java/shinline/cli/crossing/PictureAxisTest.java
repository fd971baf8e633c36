package shinline.cli.crossing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PictureAxisTest {
  /** A row or a height taken from the height of a picture. */
  private static final Pattern TURNED =
      Pattern.compile("(?i)height\\w*\\s*(\\(\\))?\\s*-\\s*1(\\.0)?\\s*-");

  private static final Path PROJECT = Path.of("..");

  @Test
  void rowsCountDownAndHeightsUp() {
    PictureAxis axis = new PictureAxis(540);
    assertThat(axis.heightOf(539)).isZero();
    assertThat(axis.heightOf(0)).isEqualTo(539);
    assertThat(axis.rowOf(axis.heightOf(123.25))).isEqualTo(123.25);
  }

  @Test
  void nobodyElseTurnsYOver() throws IOException {
    for (String module : List.of("vision", "metrics", "ui-cli")) {
      try (Stream<Path> sources = Files.walk(PROJECT.resolve(module).resolve("src/main/java"))) {
        assertThat(
                sources
                    .filter(s -> s.toString().endsWith(".java"))
                    .filter(s -> !s.endsWith("PictureAxis.java"))
                    .filter(s -> TURNED.matcher(read(s)).find()))
            .isEmpty();
      }
    }
  }

  @Test
  void suchALineWouldBeFound() {
    assertThat(TURNED.matcher("double up = heightPx - 1 - seen.y();").find()).isTrue();
    assertThat(TURNED.matcher("info.heightPx() - 1 - y").find()).isTrue();
    assertThat(TURNED.matcher("y < heightPx - 1;").find()).isFalse();
  }

  private static String read(Path source) {
    try {
      return Files.readString(source);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
