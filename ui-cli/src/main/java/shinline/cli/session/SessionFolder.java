package shinline.cli.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;

/** The folder of a session's clips, and the folder in it that the output goes to. */
public record SessionFolder(Path path) {
  /** Name of the folder of the output. */
  public static final String OUTPUT = "shinline-session";

  private static final Set<String> FILMS =
      Set.of("mp4", "mov", "m4v", "avi", "mkv", "webm", "3gp", "mts", "mpg");

  /**
   * @throws CoachException when it is no folder
   */
  public static SessionFolder of(Path path) {
    if (!Files.isDirectory(path)) {
      throw CoachException.usage(Words.say("session.no-folder", path));
    }
    return new SessionFolder(path);
  }

  public Path output() {
    return path.resolve(OUTPUT);
  }

  /** Clips, by name. */
  public List<Path> clips() {
    try (Stream<Path> all = Files.list(path)) {
      return all.filter(SessionFolder::isClip)
          .sorted(Comparator.comparing(p -> String.valueOf(p.getFileName())))
          .toList();
    } catch (IOException e) {
      throw CoachException.usage(Words.say("session.no-folder", path));
    }
  }

  private static boolean isClip(Path file) {
    String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
    int dot = name.lastIndexOf('.');
    return !name.startsWith(".")
        && dot > 0
        && FILMS.contains(name.substring(dot + 1))
        && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  /** The clip a row names, with or without its ending, in any letter case. */
  static Optional<Path> find(List<Path> clips, String name) {
    List<Path> named = clips.stream().filter(c -> fileName(c).equals(name)).toList();
    if (named.isEmpty()) {
      named = clips.stream().filter(c -> fileName(c).equalsIgnoreCase(name)).toList();
    }
    if (named.isEmpty()) {
      named =
          clips.stream()
              .filter(c -> fileName(c).replaceAll("\\.[^.]*$", "").equalsIgnoreCase(name))
              .toList();
    }
    return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
  }

  static String fileName(Path file) {
    return String.valueOf(file.getFileName());
  }

  static Optional<Instant> written(Path clip) {
    try {
      return Optional.of(Files.getLastModifiedTime(clip).toInstant());
    } catch (IOException gone) {
      return Optional.empty();
    }
  }

  /** The day a clip was written. */
  public static Optional<LocalDate> day(Path clip, ZoneId zone) {
    return written(clip).map(w -> LocalDate.ofInstant(w, zone));
  }
}
