package shinline.cli.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;
import shinline.vision.clip.FileDigest;

/**
 * The folder of a demonstration. A list in it holds the digest of every file that was written, so
 * that a second demonstration replaces the first and nothing else: a folder with anything in it
 * that is not as the first one left it is refused.
 */
final class DemoFolder {
  static final String LIST = ".shinline-demo";

  /** What desktops leave in any folder they show. */
  private static final Set<String> OF_THE_DESKTOP = Set.of(".DS_Store", "Thumbs.db", "desktop.ini");

  private final Path folder;

  DemoFolder(Path folder) {
    this.folder = folder;
  }

  Path path() {
    return folder;
  }

  /**
   * Makes the folder, or empties it of an earlier demonstration.
   *
   * @throws CoachException when there is anything else in it, or it may not be written to; nothing
   *     was changed then
   */
  void take() {
    try {
      if (Files.exists(folder, LinkOption.NOFOLLOW_LINKS) && !Files.isDirectory(folder)) {
        throw CoachException.usage(Words.say("demo.no-folder", folder));
      }
      Files.createDirectories(folder);
      Map<String, String> known = known();
      List<Path> there = files();
      for (Path file : there) {
        if (!file.equals(folder.resolve(LIST)) && !isAsWritten(file, known)) {
          throw CoachException.usage(Words.say("demo.not-own", folder, name(file)));
        }
      }
      for (Path file : there) {
        Files.delete(file);
      }
      removeEmptyFolders();
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  /** Notes all files as they are now. */
  void note() {
    try {
      StringBuilder list = new StringBuilder();
      for (Path file : files()) {
        if (!name(file).equals(LIST)) {
          list.append(FileDigest.of(file).sha256()).append("  ").append(name(file)).append('\n');
        }
      }
      Files.writeString(folder.resolve(LIST), list);
    } catch (IOException e) {
      throw unwritable(e);
    }
  }

  private CoachException unwritable(IOException e) {
    return CoachException.usage(
        Words.say("demo.unwritable", folder, String.valueOf(e.getMessage())));
  }

  private Map<String, String> known() throws IOException {
    Path list = folder.resolve(LIST);
    if (!Files.isRegularFile(list, LinkOption.NOFOLLOW_LINKS)) {
      return Map.of();
    }
    Map<String, String> known = new HashMap<>();
    for (String line : Files.readAllLines(list, StandardCharsets.UTF_8)) {
      int gap = line.indexOf("  ");
      if (gap > 0) {
        known.put(line.substring(gap + 2), line.substring(0, gap));
      }
    }
    return known;
  }

  private boolean isAsWritten(Path file, Map<String, String> known) throws IOException {
    return Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
        && Optional.ofNullable(known.get(name(file)))
            .equals(Optional.of(FileDigest.of(file).sha256()));
  }

  /** All but folders, in a fixed order; links count and are not followed. */
  private List<Path> files() throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(f -> !Files.isDirectory(f, LinkOption.NOFOLLOW_LINKS))
          .filter(f -> !OF_THE_DESKTOP.contains(String.valueOf(f.getFileName())))
          .sorted(Comparator.comparing(this::name))
          .toList();
    }
  }

  private void removeEmptyFolders() throws IOException {
    List<Path> folders;
    try (Stream<Path> all = Files.walk(folder)) {
      folders =
          all.filter(f -> Files.isDirectory(f, LinkOption.NOFOLLOW_LINKS))
              .filter(f -> !f.equals(folder))
              .sorted(Comparator.comparing(Path::getNameCount).reversed())
              .collect(Collectors.toList());
    }
    for (Path each : folders) {
      try {
        Files.delete(each);
      } catch (DirectoryNotEmptyException leftByTheDesktop) {
        continue;
      }
    }
  }

  /** The same on every system. */
  private String name(Path file) {
    return folder.relativize(file).toString().replace('\\', '/');
  }
}
