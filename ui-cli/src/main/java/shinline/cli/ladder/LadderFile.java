package shinline.cli.ladder;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import shinline.cli.yaml.YamlReading;
import shinline.metrics.ladder.Ladder;

/** The coach's ladder as a file, and the one that ships with the program. */
public final class LadderFile {
  private LadderFile() {}

  /** Reads a ladder file; what it leaves out is as in the shipped one. */
  public static YamlReading<Ladder> read(Path file) {
    return YamlReading.ofFile(file, LadderFile::parse);
  }

  /** Reads the text of a ladder file; what it leaves out is as in the shipped one. */
  public static YamlReading<Ladder> parse(String text) {
    return new LadderReader(Optional.of(shipped())).read(text);
  }

  /** The ladder that ships with the program. */
  public static Ladder shipped() {
    return new LadderReader(Optional.empty())
        .read(shippedText())
        .fold(
            ladder -> ladder,
            refused -> {
              throw new IllegalStateException("the shipped ladder: " + refused.problems());
            });
  }

  /** The shipped ladder file with its comments. */
  public static String shippedText() {
    try (InputStream in = LadderFile.class.getResourceAsStream("ladder.yaml")) {
      if (in == null) {
        throw new IllegalStateException("no shipped ladder");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
