package shinline.cli.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/**
 * What the names of a clip's results begin with: the clip's own name without its ending. With the
 * ending, as in {@code set1-mov}, where another clip beside it differs in nothing else; shortened
 * where it is so long that no result would fit beside it.
 */
public final class ResultName {
  private static final List<String> FILM_ENDINGS = List.of("mp4", "mov", "m4v", "mkv", "webm");

  /**
   * Bytes a name may have: 255 is what most file systems take, less the longest that is put after
   * it, as in {@code -rep123-lowering-rushed-12.jpg}.
   */
  private static final int MOST_BYTES = 200;

  private static final int DIGEST_CHARACTERS = 8;

  private ResultName() {}

  /**
   * @param clip whose results are named
   * @param others clips of the same run, itself included
   */
  static String of(Path clip, Collection<Path> others) {
    String name = String.valueOf(clip.getFileName());
    String stem = stem(name);
    boolean twin =
        others.stream().anyMatch(o -> twins(clip, o))
            || FILM_ENDINGS.stream()
                .flatMap(e -> List.of(e, e.toUpperCase(Locale.ROOT)).stream())
                .map(e -> clip.resolveSibling(stem + "." + e))
                .anyMatch(o -> twins(clip, o) && Files.isRegularFile(o));
    String ending = name.substring(Math.min(name.length(), stem.length() + 1));
    return shortened(twin && !ending.isEmpty() ? stem + "-" + ending : stem);
  }

  /** The name without its ending, shortened if need be. */
  public static String of(Path file) {
    return shortened(stem(String.valueOf(file.getFileName())));
  }

  private static boolean twins(Path a, Path b) {
    String one = String.valueOf(a.getFileName());
    String two = String.valueOf(b.getFileName());
    // Lower case: some file systems do not tell X.json from x.json.
    return !one.equalsIgnoreCase(two) && stem(one).equalsIgnoreCase(stem(two));
  }

  private static String stem(String name) {
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  private static String shortened(String name) {
    if (bytes(name) <= MOST_BYTES) {
      return name;
    }
    String tail = "-" + TextDigest.hex(name).substring(0, DIGEST_CHARACTERS);
    int end = name.length();
    while (bytes(name.substring(0, end)) > MOST_BYTES - tail.length()) {
      end = name.offsetByCodePoints(end, -1);
    }
    return name.substring(0, end) + tail;
  }

  private static int bytes(String name) {
    return name.getBytes(StandardCharsets.UTF_8).length;
  }
}
