package shinline.cli.place;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Set;

/**
 * The temporary folder of one run, in which libraries unpack what they load. A lock in it shows
 * that the run still lives: the system lets it go however the run ends, so that a later run knows
 * what was left by one that was killed.
 */
final class RunFolder implements AutoCloseable {
  private static final String PREFIX = "run-";
  private static final String LOCK = "lock";

  private final Path place;
  private final FileChannel lock;

  private RunFolder(Path place, FileChannel lock) {
    this.place = place;
    this.lock = lock;
  }

  /** Makes one, and takes away those that killed runs left. */
  static RunFolder open(Path runs) throws IOException {
    // One run at a time: a folder without its lock yet must not be taken for one left.
    try (FileChannel turn =
        FileChannel.open(
            runs.resolve("turn"), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      turn.lock();
      clearDead(runs);
      byte[] name = new byte[8];
      new SecureRandom().nextBytes(name);
      Path place = Files.createDirectory(runs.resolve(PREFIX + HexFormat.of().formatHex(name)));
      FileChannel lock =
          FileChannel.open(
              place.resolve(LOCK), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      lock.tryLock();
      return new RunFolder(place, lock);
    }
  }

  /** Whether no living run is left among them. */
  static boolean clear(Path runs) throws IOException {
    return clearDead(runs);
  }

  private static boolean clearDead(Path runs) throws IOException {
    boolean all = true;
    try (DirectoryStream<Path> left = Files.newDirectoryStream(runs, PREFIX + "*")) {
      for (Path run : left) {
        all &= dead(run) && emptied(run);
      }
    }
    return all;
  }

  private static boolean dead(Path run) {
    try (FileChannel lock =
        FileChannel.open(
            run.resolve(LOCK), Set.of(StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS))) {
      return lock.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      return false;
    } catch (IOException e) {
      // Killed before there was a lock.
      return true;
    }
  }

  /** Some systems keep a library that is still loaded somewhere. */
  private static boolean emptied(Path run) {
    try {
      ProgramFolder.empty(run);
      return true;
    } catch (IOException | UncheckedIOException e) {
      return false;
    }
  }

  Path place() {
    return place;
  }

  @Override
  public void close() {
    try {
      lock.close();
      ProgramFolder.empty(place);
    } catch (IOException | UncheckedIOException e) {
      // The next run takes it away.
      return;
    }
  }
}
