package shinline.cli.record;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * The folder of the record.
 *
 * @param path need not exist yet
 */
public record RecordFolder(Path path) {
  /** Names the folder where no option does. */
  public static final String VARIABLE = "SHINLINE_RECORD";

  private static final String DEFAULT_NAME = "shinline-record";

  /** The folder named, else that of the environment, else one in the user's home. */
  public static RecordFolder choose(
      Optional<Path> named, Map<String, String> environment, Path home) {
    Optional<Path> variable =
        Optional.ofNullable(environment.get(VARIABLE)).filter(v -> !v.isBlank()).map(Path::of);
    return new RecordFolder(named.or(() -> variable).orElse(home.resolve(DEFAULT_NAME)));
  }

  /** The file of the lines. */
  public Path lines() {
    return path.resolve("record.jsonl");
  }

  /** A file that marks an invented record; its being there is what counts. */
  public Path inventedMark() {
    return path.resolve("invented.txt");
  }

  /** Whether anybody trained what is on record. */
  public Origin origin() {
    return Files.exists(inventedMark()) ? Origin.INVENTED : Origin.TRAINING;
  }

  /** Held while lines are written. It stays: removing it would part two who hold it. */
  Path lock() {
    return path.resolve("record.lock");
  }

  /** Files that were written of athletes, by {@link WrittenFiles}. */
  Path writtenFiles() {
    return path.resolve("written.jsonl");
  }
}
