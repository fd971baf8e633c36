package shinline.cli.record;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.temporal.ChronoUnit;
import java.util.UUID;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;

/**
 * The record's file: lines are added at the end and are on the disk before they are acknowledged.
 * Nothing is rewritten, but for the removal of an athlete.
 *
 * <p>Who writes holds a lock of the operating system, which goes with the process however it ends.
 * A line that a killed process left half-written stays as it is; the next begins on a line of its
 * own.
 */
public final class RecordStore {
  /** Threads of one process share its lock, so they wait for each other here. */
  private static final ReentrantLock IN_PROCESS = new ReentrantLock();

  private final RecordFolder folder;
  private final Clock clock;

  public RecordStore(RecordFolder folder, Clock clock) {
    this.folder = folder;
    this.clock = clock;
  }

  public RecordFolder folder() {
    return folder;
  }

  /**
   * The record; empty when there is none yet.
   *
   * @throws CoachException when it cannot be read
   */
  public RecordLines read() {
    try {
      return RecordLines.parse(text());
    } catch (IOException e) {
      throw CoachException.usage(Words.say("record.closed", folder.lines()));
    }
  }

  private String text() throws IOException {
    try {
      return new String(Files.readAllBytes(folder.lines()), StandardCharsets.UTF_8);
    } catch (NoSuchFileException none) {
      return "";
    }
  }

  /**
   * Adds an entry.
   *
   * @return its id; the line is on the disk
   * @throws CoachException when it could not be written; nothing of it is then in the record
   */
  public String append(Entry entry) {
    return locked(record -> write(entry));
  }

  /** Adds a set, unless its clip is on record for the same athlete, leg and date. */
  public SetAdded append(SetLine set) {
    return appendSet(set.entry());
  }

  /** As {@link #append(SetLine)}, for an entry of that kind. */
  public SetAdded appendSet(Entry set) {
    return locked(
        record ->
            new RecordView(record)
                .sameClip(set)
                .<SetAdded>map(SetAdded.AlreadyThere::new)
                .orElseGet(() -> new SetAdded.Added(write(set))));
  }

  /** What became of a set that was to be added. */
  public sealed interface SetAdded {
    /**
     * @param id of the new line
     */
    record Added(String id) implements SetAdded {}

    /**
     * @param id of the line that has the clip
     */
    record AlreadyThere(String id) implements SetAdded {}

    default <T> T fold(Function<Added, T> added, Function<AlreadyThere, T> there) {
      return this instanceof Added a ? added.apply(a) : there.apply((AlreadyThere) this);
    }
  }

  /**
   * Writes the record anew without an athlete.
   *
   * @return how many lines went
   */
  public int remove(AthleteName athlete) {
    return locked(
        record -> {
          try {
            Removal removal = Removal.of(text(), athlete);
            replace(removal.kept());
            return removal.gone();
          } catch (IOException e) {
            throw unwritable(e);
          }
        });
  }

  private String write(Entry entry) {
    String id = UUID.randomUUID().toString();
    ObjectNode json = entry.line(id, clock.instant().truncatedTo(ChronoUnit.SECONDS));
    byte[] line = (Json.text(json) + "\n").getBytes(StandardCharsets.UTF_8);
    try (FileChannel file =
        FileChannel.open(
            folder.lines(),
            StandardOpenOption.CREATE,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE)) {
      long end = file.size();
      try {
        long at = end;
        if (end > 0 && !endsWithBreak(file, end)) {
          at += file.write(ByteBuffer.wrap(new byte[] {'\n'}), at);
        }
        ByteBuffer rest = ByteBuffer.wrap(line);
        while (rest.hasRemaining()) {
          at += file.write(rest, at);
        }
        file.force(true);
      } catch (IOException e) {
        // A full disk: what was written of the line goes again.
        file.truncate(end);
        throw e;
      }
      if (end == 0) {
        syncFolder();
      }
      return id;
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  private static boolean endsWithBreak(FileChannel file, long end) throws IOException {
    ByteBuffer last = ByteBuffer.allocate(1);
    return file.read(last, end - 1) == 1 && last.get(0) == '\n';
  }

  private void replace(String text) throws IOException {
    Path part = Files.createTempFile(folder.path(), "record", ".part");
    try {
      try (FileChannel file = FileChannel.open(part, StandardOpenOption.WRITE)) {
        ByteBuffer rest = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
        while (rest.hasRemaining()) {
          file.write(rest);
        }
        file.force(true);
      }
      Files.move(
          part,
          folder.lines(),
          StandardCopyOption.ATOMIC_MOVE,
          StandardCopyOption.REPLACE_EXISTING);
      syncFolder();
    } finally {
      Files.deleteIfExists(part);
    }
  }

  /** A new name in a folder is on the disk once the folder is. */
  private void syncFolder() {
    try (FileChannel directory = FileChannel.open(folder.path(), StandardOpenOption.READ)) {
      directory.force(true);
    } catch (IOException notHere) {
      // Some systems cannot open a folder; they write its names by themselves.
    }
  }

  private <T> T locked(Function<RecordLines, T> work) {
    IN_PROCESS.lock();
    try {
      Files.createDirectories(folder.path());
      try (FileChannel channel =
              FileChannel.open(folder.lock(), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
          FileLock lock = channel.lock()) {
        if (!lock.isValid()) {
          throw new IllegalStateException("lock lost");
        }
        return work.apply(read());
      }
    } catch (IOException e) {
      throw unwritable(e);
    } finally {
      IN_PROCESS.unlock();
    }
  }

  private CoachException unwritable(IOException e) {
    String why =
        e instanceof AccessDeniedException
            ? Words.say("record.denied")
            : Words.say("record.disk", String.valueOf(e.getMessage()));
    return CoachException.usage(Words.say("record.unwritable", folder.lines(), why));
  }
}
