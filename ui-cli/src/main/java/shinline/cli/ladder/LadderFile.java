package shinline.cli.ladder;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import shinline.cli.yaml.Problem;
import shinline.cli.yaml.Problems;
import shinline.cli.yaml.YamlText;
import shinline.metrics.ladder.Ladder;

/** What came of reading a ladder file. */
public sealed interface LadderFile {

  /** The file is good. */
  record Read(Ladder ladder) implements LadderFile {}

  /**
   * The file is not.
   *
   * @param problems all that were found, at least one, in the order of the file
   */
  record Refused(List<Problem> problems) implements LadderFile {
    public Refused {
      problems = List.copyOf(problems);
      if (problems.isEmpty()) {
        throw new IllegalArgumentException("refused without a problem");
      }
    }
  }

  default <T> T fold(Function<Read, T> read, Function<Refused, T> refused) {
    return this instanceof Read r ? read.apply(r) : refused.apply((Refused) this);
  }

  /** Reads a ladder file; what it leaves out is as in the shipped one. */
  static LadderFile read(Path file) {
    Problems problems = new Problems();
    return YamlText.read(file, problems)
        .map(LadderFile::parse)
        .orElseGet(() -> new Refused(problems.all()));
  }

  /** Reads the text of a ladder file; what it leaves out is as in the shipped one. */
  static LadderFile parse(String text) {
    String yaml = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return new LadderReader(Optional.of(shipped())).read(yaml);
  }

  /** The ladder that ships with the program. */
  static Ladder shipped() {
    return new LadderReader(Optional.empty())
        .read(shippedText())
        .fold(
            Read::ladder,
            refused -> {
              throw new IllegalStateException("the shipped ladder: " + refused.problems());
            });
  }

  /** The shipped ladder file with its comments. */
  static String shippedText() {
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
