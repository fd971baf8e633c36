package shinline.cli.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;

/**
 * A text file that appears whole or not at all: it is written under another name beside its place
 * and then moved there, so a full disk or a killed process never leaves half a result under the
 * name a coach opens.
 */
public final class WholeFile {
  private static final int HEAD_BYTES = 4096;

  private final Path target;
  private final Claim claim;
  private final OutputFiles files;

  WholeFile(Path target, Claim claim, OutputFiles files) {
    this.target = target;
    this.claim = claim;
    this.files = files;
  }

  /** Fills a text file. */
  @FunctionalInterface
  public interface Content {
    void writeTo(Writer writer) throws IOException;
  }

  /** Fills a file of any kind, by its path. */
  @FunctionalInterface
  public interface Filling {
    /**
     * @param file where to write; nothing is there yet, or a device
     * @param how to open it
     */
    void fill(Path file, OpenOption... how) throws IOException;
  }

  public Path path() {
    return target;
  }

  /**
   * Finds out before the long work whether the file can be written, and leaves nothing behind.
   *
   * @throws CoachException with words and {@link shinline.cli.ExitCode#USAGE} when it cannot
   */
  public void checkWritable() {
    try {
      if (Files.isDirectory(target)) {
        throw unwritable(Words.say("file.unwritable.folder"));
      }
      if (isDevice()) {
        if (!Files.isWritable(target)) {
          throw unwritable(Words.say("file.unwritable.device"));
        }
        return;
      }
      checkFree();
      files.begin(place());
    } catch (IOException e) {
      throw unwritable(words(e));
    }
  }

  /**
   * Makes the folder the file goes into, where there is none.
   *
   * @throws CoachException as {@link #checkWritable}
   */
  public void makeFolder() {
    try {
      Path folder = target.toAbsolutePath().getParent();
      if (folder != null) {
        Files.createDirectories(folder);
      }
    } catch (IOException e) {
      throw unwritable(words(e));
    }
  }

  /**
   * @throws CoachException as {@link #checkWritable}; the old file, if any, is then still there
   */
  public void write(Content content) {
    replace(
        (file, how) -> {
          try (Writer writer = Files.newBufferedWriter(file, StandardCharsets.UTF_8, how)) {
            content.writeTo(writer);
          }
        });
  }

  /**
   * @param content of a file that is no text
   * @throws CoachException as {@link #checkWritable}; the old file, if any, is then still there
   */
  public void write(byte[] content) {
    replace((file, how) -> Files.write(file, content, how));
  }

  /**
   * @param filling writes a file that is neither text nor in memory
   * @throws CoachException as {@link #checkWritable}; the old file, if any, is then still there
   */
  public void replace(Filling filling) {
    try {
      if (isDevice()) {
        filling.fill(target);
        return;
      }
      checkFree();
      Path place = place();
      Path part = files.begin(place);
      try {
        filling.fill(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        // Somebody may have put a file there in the meantime.
        checkFree();
        files.finish(part, place, claim);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (IOException e) {
      throw unwritable(words(e));
    }
  }

  /**
   * Takes an earlier result away, so that it does not look like one of today.
   *
   * @param mark what a file holds that this program wrote here; a file named by the coach and
   *     without it stays
   * @return whether nothing of an earlier run is left
   */
  public boolean withdraw(String mark) {
    try {
      if (!Files.isRegularFile(target, LinkOption.NOFOLLOW_LINKS)) {
        return true;
      }
      if (claim == Claim.OURS) {
        Path folder = target.toAbsolutePath().resolveSibling("");
        String name = String.valueOf(target.getFileName());
        files.remove(folder, name::equals);
      } else if (!files.isClip(target) && !mark.isEmpty() && begins(mark)) {
        Files.delete(target);
      }
      return !Files.exists(target, LinkOption.NOFOLLOW_LINKS);
    } catch (IOException e) {
      return false;
    }
  }

  private boolean begins(String mark) throws IOException {
    try (InputStream in = Files.newInputStream(target)) {
      return new String(in.readNBytes(HEAD_BYTES), StandardCharsets.UTF_8).contains(mark);
    }
  }

  /** Whether nothing stands in the way of a file here. */
  public boolean isFree() {
    try {
      return files.mayTake(target, claim);
    } catch (IOException e) {
      throw unwritable(words(e));
    }
  }

  private void checkFree() throws IOException {
    if (files.isClip(target)) {
      throw CoachException.usage(Words.say("file.is-clip", target));
    }
    if (!files.mayTake(target, claim)) {
      throw unwritable(Words.say("file.unwritable.foreign"));
    }
  }

  /** A pipe or a device has no place beside it to write to first. */
  public boolean isDevice() {
    return isDevice(target);
  }

  static boolean isDevice(Path place) {
    return Files.exists(place) && !Files.isRegularFile(place) && !Files.isDirectory(place);
  }

  /** A link the coach named is followed, so that the file it leads to is replaced, not the link. */
  private Path place() throws IOException {
    return claim == Claim.NAMED && Files.exists(target)
        ? target.toRealPath()
        : target.toAbsolutePath();
  }

  private CoachException unwritable(String why) {
    return CoachException.usage(Words.say("file.unwritable", target, why));
  }

  private static String words(IOException e) {
    if (e instanceof NoSuchFileException) {
      return Words.say("file.unwritable.no-folder");
    }
    if (e instanceof AccessDeniedException) {
      return Words.say("file.unwritable.denied");
    }
    if (e instanceof FileAlreadyExistsException) {
      return Words.say("file.unwritable.busy");
    }
    if (e instanceof FileSystemException f && f.getReason() != null) {
      return String.valueOf(f.getReason());
    }
    return e.getMessage() == null
        ? Words.say("file.unwritable.disk")
        : String.valueOf(e.getMessage());
  }
}
