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
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;

/**
 * Which files each clip's results go to. Made and checked before the first clip is opened: a coach
 * must not wait minutes to hear that a folder cannot be written to.
 */
public final class OutputPlan {
  private final List<Path> clips;
  private final Asked asked;
  private final OutputFiles files;

  private OutputPlan(List<Path> clips, Asked asked, OutputFiles files) {
    this.clips = List.copyOf(clips);
    this.asked = asked;
    this.files = files;
  }

  /**
   * What the coach asked to have written.
   *
   * @param json result of one clip
   * @param series frame-by-frame table of one clip
   * @param csv rep-by-rep table of one clip
   * @param folder everything of every clip
   * @param annotated one clip again, drawn on
   * @param page whether each clip gets its page
   */
  public record Asked(
      Optional<Path> json,
      Optional<Path> series,
      Optional<Path> csv,
      Optional<Path> folder,
      Optional<Path> annotated,
      Page page) {}

  /** Whether a clip's page is written. */
  public enum Page {
    WRITTEN,
    LEFT_OUT
  }

  /**
   * @throws CoachException when the places clash, or cannot be written to
   */
  public static OutputPlan of(List<Path> clips, Asked asked, OutputFiles files) {
    if (clips.size() > 1 && asked.annotated().isPresent()) {
      throw CoachException.usage(Words.say("file.one-annotated", clips.size()));
    }
    asked.annotated().ifPresent(OutputPlan::checkFilm);
    if (clips.size() > 1
        && (asked.json().isPresent() || asked.series().isPresent() || asked.csv().isPresent())) {
      throw CoachException.usage(Words.say("file.one-clip", clips.size()));
    }
    OutputPlan plan = new OutputPlan(clips, asked, files);
    Optional<Path> folder = asked.folder();
    folder.ifPresent(OutputPlan::makeFolder);
    Map<String, Path> clipOf = new HashMap<>();
    Set<Path> places = new HashSet<>();
    for (Path clip : clips) {
      if (folder.isPresent()) {
        // Lower case: some file systems do not tell X.json from x.json.
        Path other = clipOf.put(plan.stem(clip).toLowerCase(Locale.ROOT), clip);
        if (other != null) {
          throw CoachException.usage(Words.say("file.same-name", other, clip, plan.stem(clip)));
        }
      }
      for (WholeFile file : plan.files(clip)) {
        Path place = file.path().toAbsolutePath().normalize();
        if (!places.add(place)) {
          throw CoachException.usage(Words.say("file.named-twice", file.path()));
        }
        if (files.isClip(place)) {
          throw CoachException.usage(Words.say("file.is-clip", file.path()));
        }
        if (!plan.madeLater(file, clip)) {
          file.checkWritable();
        }
      }
    }
    return plan;
  }

  /** Where the JSON of a clip goes: --json, --out, both or nowhere. */
  public List<WholeFile> json(Path clip) {
    return places(asked.json(), clip, ".json");
  }

  /** Where the series of a clip goes. */
  public List<WholeFile> series(Path clip) {
    return places(asked.series(), clip, ".csv");
  }

  /** Where the rep-by-rep table of a clip goes. */
  public List<WholeFile> reps(Path clip) {
    return places(asked.csv(), clip, "-reps.csv");
  }

  /** Where the page of a clip goes: into --out, else into a folder of its own beside the clip. */
  public Optional<WholeFile> page(Path clip) {
    if (asked.page() == Page.LEFT_OUT) {
      return Optional.empty();
    }
    return Optional.of(
        files.file(
            asked
                .folder()
                .map(f -> f.resolve(stem(clip) + ".html"))
                .orElseGet(
                    () -> clip.resolveSibling(stem(clip) + "-shinline").resolve("report.html")),
            Claim.OURS));
  }

  /** Whether the page goes to a place nobody named: then a place that refuses it is no failure. */
  public boolean pageBesideClip() {
    return asked.folder().isEmpty();
  }

  /** Where the annotated clip goes: a file or nowhere. */
  public Optional<WholeFile> annotated() {
    return asked.annotated().map(f -> files.file(f, Claim.NAMED));
  }

  /** Phones go by the ending, and a film is finished by going back in it, which a pipe cannot. */
  private static void checkFilm(Path film) {
    if (!String.valueOf(film.getFileName()).toLowerCase(Locale.ROOT).endsWith(".mp4")
        || WholeFile.isDevice(film)) {
      throw CoachException.usage(Words.say("file.no-film", film));
    }
  }

  private List<WholeFile> files(Path clip) {
    return Stream.of(
            json(clip).stream(),
            series(clip).stream(),
            reps(clip).stream(),
            page(clip).stream(),
            annotated().stream())
        .flatMap(s -> s)
        .toList();
  }

  private boolean madeLater(WholeFile file, Path clip) {
    return pageBesideClip() && page(clip).filter(p -> p.path().equals(file.path())).isPresent();
  }

  private List<WholeFile> places(Optional<Path> single, Path clip, String ending) {
    return Stream.concat(
            single.stream().map(f -> files.file(f, Claim.NAMED)),
            asked.folder().stream()
                .map(f -> files.file(f.resolve(stem(clip) + ending), Claim.OURS)))
        .toList();
  }

  private String stem(Path clip) {
    return ResultName.of(clip, clips);
  }

  static void makeFolder(Path folder) {
    try {
      Files.createDirectories(folder);
    } catch (FileAlreadyExistsException e) {
      throw CoachException.usage(Words.say("file.no-folder", folder));
    } catch (IOException | InvalidPathException e) {
      throw CoachException.usage(Words.say("file.folder-refused", folder));
    }
  }
}
