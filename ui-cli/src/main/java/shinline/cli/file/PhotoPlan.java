package shinline.cli.file;

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
 * Which files each picture's results go to; made and checked before the first picture is opened.
 * Names differ from those of a clip's results: phones give a film and a still the same name.
 */
public final class PhotoPlan {
  private final Asked asked;
  private final OutputFiles files;

  private PhotoPlan(Asked asked, OutputFiles files) {
    this.asked = asked;
    this.files = files;
  }

  /**
   * What the coach asked to have written.
   *
   * @param json result of one picture
   * @param folder everything of every picture
   * @param page whether each picture gets its page and is drawn on
   */
  public record Asked(Optional<Path> json, Optional<Path> folder, OutputPlan.Page page) {}

  /**
   * @throws CoachException when the places clash, or cannot be written to
   */
  public static PhotoPlan of(List<Path> photos, Asked asked, OutputFiles files) {
    if (photos.size() > 1 && asked.json().isPresent()) {
      throw CoachException.usage(Words.say("photo.one-json", photos.size()));
    }
    PhotoPlan plan = new PhotoPlan(asked, files);
    asked.folder().ifPresent(OutputPlan::makeFolder);
    Map<Path, Path> photoOf = new HashMap<>();
    for (Path photo : photos) {
      Path stem = plan.stem(photo).toAbsolutePath().normalize();
      // Lower case: some file systems do not tell X.json from x.json.
      Path other = photoOf.put(Path.of(stem.toString().toLowerCase(Locale.ROOT)), photo);
      if (other != null && plan.writesByName()) {
        throw CoachException.usage(
            Words.say("photo.same-name", other, photo, plan.stem(photo).getFileName()));
      }
    }
    Set<Path> places = new HashSet<>();
    for (Path photo : photos) {
      Stream<WholeFile> all =
          Stream.of(
                  plan.json(photo).stream(), plan.page(photo).stream(), plan.drawn(photo).stream())
              .flatMap(s -> s);
      for (WholeFile file : all.toList()) {
        Path place = file.path().toAbsolutePath().normalize();
        if (!places.add(place)) {
          throw CoachException.usage(Words.say("file.named-twice", file.path()));
        }
        if (files.isClip(place)) {
          throw CoachException.usage(Words.say("file.is-clip", file.path()));
        }
        boolean beside = !place.equals(plan.asked.json().map(PhotoPlan::whole).orElse(null));
        if (!beside || asked.folder().isPresent()) {
          file.checkWritable();
        }
      }
    }
    return plan;
  }

  private static Path whole(Path path) {
    return path.toAbsolutePath().normalize();
  }

  private boolean writesByName() {
    return asked.folder().isPresent() || asked.page() == OutputPlan.Page.WRITTEN;
  }

  /** Where the JSON goes: --json, --out, both or nowhere. */
  public List<WholeFile> json(Path photo) {
    return Stream.concat(
            asked.json().stream().map(f -> files.file(f, Claim.NAMED)),
            asked.folder().stream().map(f -> files.file(named(photo, ".json"), Claim.OURS)))
        .toList();
  }

  /** Where the page goes: into --out, else into a folder of its own beside the picture. */
  public Optional<WholeFile> page(Path photo) {
    return asked.page() == OutputPlan.Page.LEFT_OUT
        ? Optional.empty()
        : Optional.of(files.file(named(photo, ".html"), Claim.OURS));
  }

  /** Where the drawn-on picture goes: beside the page. */
  public Optional<WholeFile> drawn(Path photo) {
    return writesByName()
        ? Optional.of(files.file(named(photo, ".jpg"), Claim.OURS))
        : Optional.empty();
  }

  /** Whether results go to a place nobody named: then a place that refuses them is no failure. */
  public boolean besidePhoto() {
    return asked.folder().isEmpty();
  }

  private Path named(Path photo, String ending) {
    Path stem = stem(photo);
    return stem.resolveSibling(stem.getFileName() + ending);
  }

  private Path stem(Path photo) {
    String name = ResultName.of(photo);
    return asked
        .folder()
        .map(f -> f.resolve(name + "-photo"))
        .orElseGet(() -> photo.resolveSibling(name + "-shinline").resolve("photo"));
  }
}
