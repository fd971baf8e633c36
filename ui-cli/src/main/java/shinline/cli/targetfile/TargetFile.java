package shinline.cli.targetfile;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Function;
import shinline.cli.yaml.Problem;
import shinline.cli.yaml.Problems;
import shinline.cli.yaml.YamlText;
import shinline.metrics.target.Target;

/** What came of reading a target file. */
public sealed interface TargetFile {

  /** The file is good. */
  record Read(Target target) implements TargetFile {}

  /**
   * The file is not.
   *
   * @param problems all that were found, at least one, in the order of the file
   */
  record Refused(List<Problem> problems) implements TargetFile {
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

  /** Reads a target file; a file that cannot be opened is refused like any other. */
  static TargetFile read(Path file) {
    Problems problems = new Problems();
    return YamlText.read(file, problems)
        .map(TargetFile::parse)
        .orElseGet(() -> new Refused(problems.all()));
  }

  /** Reads the text of a target file. */
  static TargetFile parse(String text) {
    // Some editors put a mark in front of the text that means nothing in UTF-8.
    String yaml = text.startsWith("\uFEFF") ? text.substring(1) : text;
    return new TargetReader().read(yaml);
  }
}
