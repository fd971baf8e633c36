package shinline.cli.place;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;

/**
 * The folder with what the program unpacks to run: the video libraries, kept from one run to the
 * next, and a folder for each living run. The variable {@value #VARIABLE} names another.
 */
public final class ProgramFolder {
  public static final String VARIABLE = "SHINLINE_CACHE";

  private static final String NAME = "shinline";
  private static final String LIBRARIES = "libraries";
  private static final String RUNS = "runs";

  /** What is unpacked takes on any system, with room to spare: 218 MB were seen on Linux. */
  private static final long LIBRARY_BYTES = 350L << 20;

  /** What a run unpacks when model and runtime are new or gone: 64 MB were seen on Linux. */
  private static final long RUN_BYTES = 100L << 20;

  private final Path place;

  public ProgramFolder(Path place) {
    this.place = place.toAbsolutePath();
  }

  /** The one of this user, where their system keeps such things. */
  public static ProgramFolder ofUser() {
    return new ProgramFolder(
        place(System.getenv(), System.getProperty("os.name"), System.getProperty("user.home")));
  }

  static Path place(Map<String, String> environment, String system, String home) {
    Optional<Path> named = named(environment, VARIABLE);
    if (named.isPresent()) {
      return named.get();
    }
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return named(environment, "LOCALAPPDATA").orElse(Path.of(home)).resolve(NAME);
    }
    return name.startsWith("mac")
        ? Path.of(home, "Library", "Caches", NAME)
        : named(environment, "XDG_CACHE_HOME").orElse(Path.of(home, ".cache")).resolve(NAME);
  }

  private static Optional<Path> named(Map<String, String> environment, String variable) {
    return Optional.ofNullable(environment.get(variable)).filter(p -> !p.isBlank()).map(Path::of);
  }

  public Path place() {
    return place;
  }

  /** Where unpacked video libraries are kept. */
  Path libraries() {
    return place.resolve(LIBRARIES);
  }

  /**
   * A folder of this run's own; those of runs that were killed are taken away.
   *
   * @throws CoachException when nothing can be put there
   */
  RunFolder begin() {
    try {
      boolean unpacked = Files.isDirectory(libraries());
      Files.createDirectories(place.resolve(RUNS));
      long free = Files.getFileStore(place).getUsableSpace();
      long needed = unpacked ? RUN_BYTES : LIBRARY_BYTES + RUN_BYTES;
      if (free < needed) {
        throw CoachException.usage(
            Words.say("place.full", place, free >> 20, needed >> 20, VARIABLE));
      }
      Files.createDirectories(libraries());
      return RunFolder.open(place.resolve(RUNS));
    } catch (IOException e) {
      throw CoachException.usage(Words.say("place.unwritable", place, VARIABLE));
    }
  }

  /** Bytes of all files in it. */
  public long bytes() throws IOException {
    long bytes = 0;
    for (Path file : all()) {
      bytes += Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS) ? Files.size(file) : 0;
    }
    return bytes;
  }

  /**
   * Removes what the program put there, but for the folders of living runs.
   *
   * @return whether all of it is gone
   */
  public boolean remove() throws IOException {
    if (!Files.isDirectory(place)) {
      return true;
    }
    if (Files.isDirectory(place.resolve(RUNS)) && !RunFolder.clear(place.resolve(RUNS))) {
      return false;
    }
    empty(libraries());
    empty(place.resolve(RUNS));
    try (Stream<Path> left = Files.list(place)) {
      if (left.findAny().isPresent()) {
        return true;
      }
    }
    Files.delete(place);
    return true;
  }

  private List<Path> all() throws IOException {
    if (!Files.isDirectory(place)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(place)) {
      return files.toList();
    }
  }

  /** Removes a folder with all that is in it, without following links; none is fine. */
  static void empty(Path folder) throws IOException {
    if (!Files.isDirectory(folder, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    List<Path> files;
    try (Stream<Path> walk = Files.walk(folder)) {
      files = walk.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path file : files) {
      Files.deleteIfExists(file);
    }
  }
}
