package shinline.cli.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import shinline.cli.file.Claim;
import shinline.cli.file.FlagImages;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.ResultName;
import shinline.cli.file.WholeFile;
import shinline.metrics.fault.FlagKind;

/** The pictures of a result's faults as files: {@code NAME-rep2-heel-rise.jpg} beside it. */
public final class PictureFiles {
  private static final String ENDING = ".jpg";

  private final Path folder;
  private final String stem;
  private final OutputFiles files;

  /**
   * @param result the result file, whose name without ending begins the name of each picture
   * @param files through which they are written
   */
  public PictureFiles(Path result, OutputFiles files) {
    this.files = files;
    folder = result.toAbsolutePath().resolveSibling("");
    stem = ResultName.of(result);
  }

  /**
   * Writes the picture of each fault, and takes away those of an earlier result of this name: a
   * picture must not lie beside a result that does not speak of it.
   *
   * @throws shinline.cli.CoachException when one cannot be written
   */
  public FlagImages write(RepPictures pictures) {
    Map<String, String> written = new HashMap<>();
    for (RepPicture picture : pictures.all()) {
      if (picture.flag().isPresent()) {
        String name = name(picture.rep(), picture.flag().get());
        WholeFile file = files.file(folder.resolve(freeName(name)), Claim.OURS);
        file.write(picture.jpeg());
        written.put(name, String.valueOf(file.path().getFileName()));
      }
    }
    removeOthers(Set.copyOf(written.values()));
    return (rep, kind) -> Optional.ofNullable(written.get(name(rep, kind)));
  }

  /** Takes the pictures of an earlier result of this name away. */
  public void withdraw() {
    removeOthers(Set.of());
  }

  private String name(int rep, FlagKind kind) {
    return stem + "-rep" + rep + "-" + kind.jsonName() + ENDING;
  }

  /** A picture that stays in the coach's way gets a number, and the old one is left alone. */
  private String freeName(String name) {
    String free = name;
    for (int number = 2; !files.file(folder.resolve(free), Claim.OURS).isFree(); number++) {
      free = name.substring(0, name.length() - ENDING.length()) + "-" + number + ENDING;
    }
    return free;
  }

  private void removeOthers(Set<String> written) {
    String kinds =
        Arrays.stream(FlagKind.values()).map(FlagKind::jsonName).collect(Collectors.joining("|"));
    Pattern ours =
        Pattern.compile(Pattern.quote(stem) + "-rep[0-9]{1,3}-(" + kinds + ")(-[0-9]+)?\\.jpg");
    try {
      files.remove(folder, name -> ours.matcher(name).matches() && !written.contains(name));
    } catch (IOException e) {
      // An old picture that stays is untidy; it is no reason to lose the result.
      return;
    }
  }
}
