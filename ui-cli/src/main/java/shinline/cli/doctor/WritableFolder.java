package shinline.cli.doctor;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import shinline.cli.words.Words;

/** Whether a file can be put into a folder: tried, for rights alone do not tell. */
final class WritableFolder {
  private static final long LEAST_BYTES = 100_000_000;
  private static final double MEGABYTE = 1e6;

  private final Part part;
  private final Path folder;

  WritableFolder(Part part, Path folder) {
    this.part = part;
    this.folder = folder.toAbsolutePath();
  }

  /** The folder must be there. */
  Health there() {
    if (!Files.isDirectory(folder)) {
      return Health.bad(part, Words.say("doctor.folder.missing", folder));
    }
    return tried(folder);
  }

  /** The folder may still have to be made; then the nearest one above it that is there counts. */
  Health orToBeMade() {
    if (Files.isDirectory(folder)) {
      return tried(folder);
    }
    Path above = folder;
    while (!Files.exists(above) && above.getParent() != null) {
      above = above.getParent();
    }
    return Files.isDirectory(above)
        ? tried(above)
        : Health.bad(part, Words.say("doctor.folder.closed", folder));
  }

  private Health tried(Path in) {
    try {
      Path file = Files.createTempFile(in, ".shinline-", ".try");
      Files.delete(file);
      long free = Files.getFileStore(in).getUsableSpace();
      return free < LEAST_BYTES
          ? Health.poor(part, Words.say("doctor.folder.full", folder, free / MEGABYTE))
          : Health.good(
              part,
              in.equals(folder)
                  ? Words.say("doctor.folder", folder, free / MEGABYTE)
                  : Words.say("doctor.folder.to-be-made", folder, free / MEGABYTE));
    } catch (IOException | SecurityException e) {
      return Health.bad(part, Words.say("doctor.folder.closed", folder));
    }
  }
}
