package shinline.cli.command;

import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import shinline.cli.ladder.LadderFile;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;
import shinline.metrics.ladder.Ladder;

/** The option that names the coach's ladder. */
final class LadderOption {
  @Option(names = "--ladder", paramLabel = "FILE", descriptionKey = "shinline.shared.ladder-file")
  private @Nullable Path file;

  /** Where the ladder is read from; empty for the shipped one. */
  Optional<Path> file() {
    return Optional.ofNullable(file);
  }

  /** The ladder named, else the shipped one. */
  Ladder ladder() {
    return file == null ? LadderFile.shipped() : read(file);
  }

  static Ladder read(Path file) {
    return LadderFile.read(file)
        .fold(
            ladder -> ladder,
            refused -> {
              throw CoachException.usage(refused.under(Words.say("ladder.bad"), file));
            });
  }
}
