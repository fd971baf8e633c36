package shinline.cli.file;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A folder of one run inside the folder its results go to, where files grow until they are whole:
 * beside their place, since only a move within one file system is atomic. Its name is random, it is
 * made anew and never entered through a link, and a lock in it shows that the run still lives.
 */
final class WorkFolder implements AutoCloseable {
  private static final String PREFIX = ".shinline-";
  private static final String LOCK = "lock";
  private static final SecureRandom RANDOM = new SecureRandom();

  private final FolderManifest manifest;
  private final Path place;
  private final FileChannel channel;
  private int files;

  private WorkFolder(FolderManifest manifest, Path place, FileChannel channel) {
    this.manifest = manifest;
    this.place = place;
    this.channel = channel;
  }

  /**
   * Makes one, and takes away those that killed runs left.
   *
   * @param folder where results go; has to be there
   */
  static WorkFolder open(Path folder) throws IOException {
    FolderManifest manifest = new FolderManifest(folder);
    return manifest.turn(
        entries -> {
          for (String left : entries.workFolders()) {
            if (isOurName(left) && cleared(folder.resolve(left))) {
              entries.ended(left);
            }
          }
          byte[] name = new byte[8];
          RANDOM.nextBytes(name);
          Path place = folder.resolve(PREFIX + HexFormat.of().formatHex(name));
          // Noted first: a run that is killed in between leaves a note of nothing, which is less
          // than a folder that nobody knows of.
          entries.began(place.getFileName().toString());
          entries.writeNow();
          Files.createDirectory(place);
          FileChannel channel =
              FileChannel.open(
                  place.resolve(LOCK), StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
          lock(channel);
          return new WorkFolder(manifest, place, channel);
        });
  }

  /** A name for a file that is not there yet; keeps the ending, by which some writers go. */
  Path newFile(String like) {
    int dot = like.lastIndexOf('.');
    return place.resolve("part" + files++ + (dot < 0 ? "" : like.substring(dot)));
  }

  /** Takes the folder away with all that is left in it. */
  @Override
  public void close() throws IOException {
    channel.close();
    empty(place);
    manifest.turn(
        entries -> {
          entries.ended(place.getFileName().toString());
          return true;
        });
  }

  private static boolean isOurName(String name) {
    return name.matches("\\.shinline-[0-9a-f]{16}");
  }

  /** Whether a run's folder is gone, as it died; that of a living run is left alone. */
  private static boolean cleared(Path left) {
    if (!Files.isDirectory(left, LinkOption.NOFOLLOW_LINKS)) {
      return true;
    }
    try (FileChannel channel =
        FileChannel.open(
            left.resolve(LOCK), Set.of(StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS))) {
      if (lock(channel) == null) {
        return false;
      }
    } catch (IOException e) {
      // Killed before there was a lock, or by somebody who took it away.
    }
    try {
      empty(left);
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  private static @Nullable FileLock lock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException e) {
      return null;
    }
  }

  /** Nothing in such a folder has folders of its own. */
  private static void empty(Path folder) throws IOException {
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      for (Path file : files) {
        Files.delete(file);
      }
    }
    Files.delete(folder);
  }
}
