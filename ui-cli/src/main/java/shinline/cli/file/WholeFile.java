package shinline.cli.file;

import java.io.IOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;

/**
 * A text file that appears whole or not at all: it is written under another name beside its place
 * and then moved there, so a full disk or a killed process never leaves half a result under the
 * name a coach opens.
 */
public final class WholeFile {
  private final Path target;

  public WholeFile(Path target) {
    this.target = target;
  }

  /** Fills a text file. */
  @FunctionalInterface
  public interface Content {
    void writeTo(Writer writer) throws IOException;
  }

  /** Fills a file of any kind, by its path. */
  @FunctionalInterface
  private interface Filling {
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
      Path part = part();
      Files.newOutputStream(part, StandardOpenOption.CREATE_NEW).close();
      Files.delete(part);
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

  private void replace(Filling filling) {
    try {
      if (isDevice()) {
        filling.fill(target);
        return;
      }
      // A link is followed, so that the file it names is replaced and not the link.
      Path place = Files.exists(target) ? target.toRealPath() : target;
      Path part = part();
      try {
        filling.fill(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        move(part, place);
      } finally {
        Files.deleteIfExists(part);
      }
    } catch (IOException e) {
      throw unwritable(words(e));
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** A pipe or a device has no place beside it to write to first. */
  public boolean isDevice() {
    return Files.exists(target) && !Files.isRegularFile(target) && !Files.isDirectory(target);
  }

  /** Beside the file itself, since only a move within one file system is atomic. */
  private Path part() throws IOException {
    Path place = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
    return place.resolveSibling(
        "." + place.getFileName() + "." + ProcessHandle.current().pid() + ".part");
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
