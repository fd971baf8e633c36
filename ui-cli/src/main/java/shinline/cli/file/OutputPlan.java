package shinline.cli.file;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import shinline.cli.CoachException;

/**
 * Which files each clip's results go to. Made and checked before the first clip is opened: a coach
 * must not wait minutes to hear that a folder cannot be written to.
 */
public final class OutputPlan {
  private final Optional<Path> json;
  private final Optional<Path> series;
  private final Optional<Path> folder;
  private final Optional<Path> annotated;

  private OutputPlan(
      Optional<Path> json, Optional<Path> series, Optional<Path> folder, Optional<Path> annotated) {
    this.json = json;
    this.series = series;
    this.folder = folder;
    this.annotated = annotated;
  }

  /**
   * @throws CoachException when the places clash, or cannot be written to
   */
  public static OutputPlan of(
      List<Path> clips,
      Optional<Path> json,
      Optional<Path> series,
      Optional<Path> folder,
      Optional<Path> annotated) {
    if (clips.size() > 1 && annotated.isPresent()) {
      throw CoachException.usage(
          "--annotated is one clip, and " + clips.size() + " were given. Check them one by one.");
    }
    annotated.ifPresent(OutputPlan::checkFilm);
    if (clips.size() > 1 && (json.isPresent() || series.isPresent())) {
      throw CoachException.usage(
          "--json and --series hold one clip, and "
              + clips.size()
              + " were given. Use --out FOLDER, which writes NAME.json and NAME.csv for each.");
    }
    OutputPlan plan = new OutputPlan(json, series, folder, annotated);
    folder.ifPresent(OutputPlan::makeFolder);
    Map<String, Path> clipOf = new HashMap<>();
    Set<Path> places = new HashSet<>();
    for (Path clip : clips) {
      if (folder.isPresent()) {
        // Lower case: some file systems do not tell X.json from x.json.
        Path other = clipOf.put(stem(clip).toLowerCase(Locale.ROOT), clip);
        if (other != null) {
          throw CoachException.usage(
              other
                  + " and "
                  + clip
                  + " would both be written as "
                  + stem(clip)
                  + ".json. Rename one of them, or use two folders.");
        }
      }
      for (WholeFile file : plan.files(clip)) {
        Path place = file.path().toAbsolutePath().normalize();
        if (!places.add(place)) {
          throw CoachException.usage(
              file.path() + " was named for two results. Give each its own name.");
        }
        for (Path input : clips) {
          if (place.equals(input.toAbsolutePath().normalize()) || same(place, input)) {
            throw CoachException.usage(
                file.path() + " is a clip, and a result would overwrite it. Choose another name.");
          }
        }
        file.checkWritable();
      }
    }
    return plan;
  }

  /** Where the JSON of a clip goes: --json, --out, both or nowhere. */
  public List<WholeFile> json(Path clip) {
    return places(json, clip, ".json");
  }

  /** Where the series of a clip goes. */
  public List<WholeFile> series(Path clip) {
    return places(series, clip, ".csv");
  }

  /** Where the annotated clip goes: a file or nowhere. */
  public Optional<Path> annotated() {
    return annotated;
  }

  /** Phones go by the ending, and a film is finished by going back in it, which a pipe cannot. */
  private static void checkFilm(Path film) {
    if (!String.valueOf(film.getFileName()).toLowerCase(Locale.ROOT).endsWith(".mp4")
        || new WholeFile(film).isDevice()) {
      throw CoachException.usage(
          "--annotated " + film + ": name a file that ends in .mp4, for example set1-drawn.mp4.");
    }
  }

  private List<WholeFile> files(Path clip) {
    return Stream.of(json(clip), series(clip), annotated.map(WholeFile::new).stream().toList())
        .flatMap(List::stream)
        .toList();
  }

  private List<WholeFile> places(Optional<Path> single, Path clip, String ending) {
    return Stream.concat(single.stream(), folder.stream().map(f -> f.resolve(stem(clip) + ending)))
        .map(WholeFile::new)
        .toList();
  }

  private static String stem(Path clip) {
    String name = String.valueOf(clip.getFileName());
    int dot = name.lastIndexOf('.');
    return dot > 0 ? name.substring(0, dot) : name;
  }

  private static boolean same(Path a, Path b) {
    try {
      return Files.exists(a) && Files.exists(b) && Files.isSameFile(a, b);
    } catch (IOException e) {
      return false;
    }
  }

  private static void makeFolder(Path folder) {
    try {
      Files.createDirectories(folder);
    } catch (FileAlreadyExistsException e) {
      throw CoachException.usage(
          "cannot write to " + folder + ": it is a file, not a folder. Choose another --out.");
    } catch (IOException | InvalidPathException e) {
      throw CoachException.usage(
          "cannot make the folder "
              + folder
              + ". Look whether the place exists and may be written to, or choose another --out.");
    }
  }
}
