package shinline.cli.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * What this program wrote into one folder, kept in the folder itself as {@value #NAME}: the digest
 * of each file, so that only what is still as it was written is ever replaced or removed unasked,
 * and the work folders of runs, so that what a killed run left is known as ours.
 *
 * <p>One JSON object a line, appended; a last line that a killed run left half is passed over. Runs
 * at the same time take turns by a lock on the file, which the system lets go when a run dies.
 */
final class FolderManifest {
  static final String NAME = ".shinline-files";

  /** From this many lines on the file is written anew with what still holds. */
  private static final int LONG = 400;

  private static final ObjectMapper JSON = new ObjectMapper();

  /** Locks of one process do not hold off its own threads. */
  private static final Object ONE_AT_A_TIME = new Object();

  private final Path folder;
  private final Path file;

  /**
   * @param folder a folder that is there
   */
  FolderManifest(Path folder) {
    this.folder = folder;
    file = folder.resolve(NAME);
  }

  /** What is done while no other run may change the manifest. */
  @FunctionalInterface
  interface Turn<T> {
    T take(Entries entries) throws IOException;
  }

  /** What the manifest holds. */
  static final class Entries {
    private final Map<String, String> digests = new LinkedHashMap<>();
    private final Set<String> workFolders = new LinkedHashSet<>();
    private final StringBuilder added = new StringBuilder();
    private final FileChannel channel;
    private int lines;

    /** Whether a new line can be written as it is: a killed run may have left half a line. */
    private boolean atLineStart;

    Entries(FileChannel channel, String text) {
      this.channel = channel;
      atLineStart = text.isEmpty() || text.endsWith("\n");
      text.lines().forEach(this::apply);
    }

    /** Writes what was added so far: what comes next may be cut off by a kill. */
    void writeNow() throws IOException {
      if (added.length() == 0) {
        return;
      }
      ByteBuffer bytes = StandardCharsets.UTF_8.encode((atLineStart ? "" : "\n") + added);
      channel.position(channel.size());
      while (bytes.hasRemaining()) {
        channel.write(bytes);
      }
      added.setLength(0);
      atLineStart = true;
    }

    /** The digest a file had when it was written last; empty for a file of somebody else. */
    Optional<String> digest(String name) {
      return Optional.ofNullable(digests.get(name));
    }

    Set<String> files() {
      return Set.copyOf(digests.keySet());
    }

    Set<String> workFolders() {
      return Set.copyOf(workFolders);
    }

    void wrote(String name, String sha256) {
      add(Map.of("wrote", name, "sha256", sha256));
    }

    void removed(String name) {
      add(Map.of("removed", name));
    }

    void began(String workFolder) {
      add(Map.of("began", workFolder));
    }

    void ended(String workFolder) {
      add(Map.of("ended", workFolder));
    }

    private void add(Map<String, String> line) {
      try {
        String text = JSON.writeValueAsString(new TreeMap<>(line));
        apply(text);
        added.append(text).append('\n');
      } catch (JsonProcessingException e) {
        throw new IllegalStateException("a line of text cannot be written as JSON", e);
      }
    }

    private void apply(String text) {
      JsonNode line = parsed(text);
      if (line == null) {
        return;
      }
      lines++;
      if (line.hasNonNull("wrote") && line.hasNonNull("sha256")) {
        digests.put(line.get("wrote").asText(), line.get("sha256").asText());
      } else if (line.hasNonNull("removed")) {
        digests.remove(line.get("removed").asText());
      } else if (line.hasNonNull("began")) {
        workFolders.add(line.get("began").asText());
      } else if (line.hasNonNull("ended")) {
        workFolders.remove(line.get("ended").asText());
      }
    }

    private boolean empty() {
      return digests.isEmpty() && workFolders.isEmpty();
    }

    private String all() {
      added.setLength(0);
      Map<String, String> kept = new LinkedHashMap<>(digests);
      Set<String> working = new LinkedHashSet<>(workFolders);
      kept.forEach(this::wrote);
      working.forEach(this::began);
      return added.toString();
    }
  }

  private static @Nullable JsonNode parsed(String text) {
    try {
      JsonNode line = JSON.readTree(text);
      return line != null && line.isObject() ? line : null;
    } catch (JsonProcessingException e) {
      return null;
    }
  }

  /** Looks, without making a manifest where there is none. */
  Optional<String> digest(String name) throws IOException {
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return Optional.empty();
    }
    return turn(entries -> entries.digest(name));
  }

  /** Whether there is a manifest in the folder. */
  boolean exists() {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  /**
   * Reads the manifest, lets it be looked at and added to, and writes what was added.
   *
   * @throws IOException when the folder may not be written to, or a link stands in the manifest's
   *     place
   */
  <T> T turn(Turn<T> turn) throws IOException {
    synchronized (ONE_AT_A_TIME) {
      while (true) {
        try (FileChannel channel =
            FileChannel.open(
                file,
                Set.of(
                    StandardOpenOption.CREATE,
                    StandardOpenOption.READ,
                    StandardOpenOption.WRITE,
                    LinkOption.NOFOLLOW_LINKS))) {
          @Nullable FileLock lock = lock(channel);
          try {
            if (!stillThere(channel)) {
              continue;
            }
            return turn(turn, channel);
          } finally {
            if (lock != null) {
              lock.release();
            }
          }
        }
      }
    }
  }

  private <T> T turn(Turn<T> turn, FileChannel channel) throws IOException {
    Entries entries = new Entries(channel, read(channel));
    T result = turn.take(entries);
    if (entries.empty()) {
      Files.deleteIfExists(file);
    } else if (entries.lines > LONG) {
      Path anew = folder.resolve(NAME + ".new");
      Files.deleteIfExists(anew);
      Files.writeString(anew, entries.all(), StandardOpenOption.CREATE_NEW);
      Files.move(anew, file, StandardCopyOption.REPLACE_EXISTING);
    } else {
      entries.writeNow();
    }
    return result;
  }

  /** Some network drives lend no locks; then two runs at once have to be lucky. */
  private static @Nullable FileLock lock(FileChannel channel) {
    try {
      return channel.lock();
    } catch (IOException e) {
      return null;
    }
  }

  /** Whether the file that was opened is not one that another run has replaced since. */
  private boolean stillThere(FileChannel channel) throws IOException {
    try {
      return Files.size(file) == channel.size();
    } catch (NoSuchFileException e) {
      return false;
    }
  }

  private static String read(FileChannel channel) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate((int) Math.min(channel.size(), Integer.MAX_VALUE));
    channel.position(0);
    while (bytes.hasRemaining() && channel.read(bytes) >= 0) {}
    bytes.flip();
    return StandardCharsets.UTF_8.decode(bytes).toString();
  }
}
