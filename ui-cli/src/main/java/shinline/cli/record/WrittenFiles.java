package shinline.cli.record;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import shinline.vision.clip.FileDigest;

/**
 * Which files Shinline wrote of which athlete, with their digests, so that a removal deletes just
 * those: a file that was changed since, or is a clip or sheet of the coach's, is never in question.
 */
public final class WrittenFiles {
  /** Names the clip of a picture of the bottom. */
  private static final String BOTTOM_OF = "bottomOf";

  private final RecordFolder folder;

  public WrittenFiles(RecordFolder folder) {
    this.folder = folder;
  }

  /** Notes a file after it was written; a second time changes nothing. */
  public void note(AthleteName athlete, Path file) throws IOException {
    append(line(athlete, file));
  }

  /**
   * Notes a picture of the bottom of a set after it was written.
   *
   * @param clipSha256 digest of the clip, as on the line of the set
   */
  public void noteBottom(AthleteName athlete, Path picture, String clipSha256) throws IOException {
    ObjectNode line = line(athlete, picture);
    line.put(BOTTOM_OF, clipSha256);
    append(line);
  }

  /**
   * Pictures of bottoms of an athlete that are still as they were written, by the digest of their
   * clip in lower case; of several of one clip the first that is left.
   */
  public Map<String, Path> bottoms(AthleteName athlete) throws IOException {
    Map<String, Path> found = new HashMap<>();
    for (String row : rows()) {
      Optional<ObjectNode> line =
          Json.parse(row).filter(l -> of(l, athlete) && Json.text(l, BOTTOM_OF).isPresent());
      if (line.isPresent()) {
        Path file = Path.of(Json.text(line.get(), "file").orElse(""));
        String clip = Json.text(line.get(), BOTTOM_OF).orElseThrow().toLowerCase(Locale.ROOT);
        if (Files.isRegularFile(file)
            && Json.text(line.get(), "sha256").filter(digestOf(file)::equals).isPresent()) {
          found.putIfAbsent(clip, file);
        }
      }
    }
    return found;
  }

  private static boolean of(ObjectNode line, AthleteName athlete) {
    return Json.text(line, "athlete").map(AthleteName::new).filter(athlete::sameAs).isPresent();
  }

  private static ObjectNode line(AthleteName athlete, Path file) throws IOException {
    ObjectNode line = Json.object();
    line.put("athlete", athlete.written());
    line.put("file", file.toAbsolutePath().normalize().toString());
    line.put("sha256", FileDigest.of(file).sha256());
    return line;
  }

  private void append(ObjectNode line) throws IOException {
    if (rows().contains(Json.text(line))) {
      return;
    }
    Files.createDirectories(folder.path());
    Files.writeString(
        folder.writtenFiles(),
        Json.text(line) + "\n",
        StandardOpenOption.CREATE,
        StandardOpenOption.APPEND);
  }

  /**
   * What became of the files of an athlete.
   *
   * @param deleted as they were written
   * @param left changed since, or not to be deleted
   */
  public record Deleted(List<Path> deleted, List<Path> left) {}

  /** Deletes the files of an athlete, and forgets them. */
  public Deleted delete(AthleteName athlete) throws IOException {
    List<Path> deleted = new ArrayList<>();
    List<Path> left = new ArrayList<>();
    StringBuilder kept = new StringBuilder();
    List<ObjectNode> own = new ArrayList<>();
    for (String row : rows()) {
      Optional<ObjectNode> line = Json.parse(row);
      if (line.filter(l -> of(l, athlete)).isPresent()) {
        own.add(line.get());
      } else {
        kept.append(row).append('\n');
      }
    }
    for (ObjectNode line : own) {
      Path file = Path.of(Json.text(line, "file").orElse(""));
      if (!Files.isRegularFile(file) || deleted.contains(file)) {
        continue;
      }
      if (own.stream()
          .filter(l -> Json.text(l, "file").equals(Json.text(line, "file")))
          .anyMatch(l -> Json.text(l, "sha256").filter(digestOf(file)::equals).isPresent())) {
        Files.delete(file);
        deleted.add(file);
      } else if (!left.contains(file)) {
        left.add(file);
      }
    }
    if (!own.isEmpty()) {
      Path part = Files.createTempFile(folder.path(), "written", ".part");
      Files.writeString(part, kept);
      Files.move(
          part,
          folder.writtenFiles(),
          StandardCopyOption.ATOMIC_MOVE,
          StandardCopyOption.REPLACE_EXISTING);
    }
    return new Deleted(deleted, left);
  }

  private List<String> rows() throws IOException {
    try {
      return Files.readAllLines(folder.writtenFiles(), StandardCharsets.UTF_8).stream()
          .filter(r -> !r.isBlank())
          .toList();
    } catch (NoSuchFileException none) {
      return List.of();
    }
  }

  private static String digestOf(Path file) {
    try {
      return FileDigest.of(file).sha256();
    } catch (IOException unreadable) {
      return "";
    }
  }
}
