package shinline.cli.targetfile;

import java.nio.file.Path;
import shinline.cli.yaml.YamlReading;
import shinline.metrics.target.Target;

/** The coach's file of what is asked for today. */
public final class TargetFile {
  private TargetFile() {}

  /** Reads a target file. */
  public static YamlReading<Target> read(Path file) {
    return YamlReading.ofFile(file, TargetFile::parse);
  }

  /** Reads the text of a target file. */
  public static YamlReading<Target> parse(String text) {
    return new TargetReader().read(text);
  }
}
