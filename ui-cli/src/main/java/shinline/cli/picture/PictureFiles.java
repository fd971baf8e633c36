package shinline.cli.picture;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import shinline.cli.file.FlagImages;
import shinline.cli.file.WholeFile;
import shinline.metrics.fault.FlagKind;

/** The pictures of a result's faults as files: {@code NAME-rep2-heel-rise.jpg} beside it. */
public final class PictureFiles {
  private final Path folder;
  private final String stem;

  /**
   * @param result the result file, whose name without ending begins the name of each picture
   */
  public PictureFiles(Path result) {
    folder = result.toAbsolutePath().resolveSibling("");
    String name = String.valueOf(result.getFileName());
    int dot = name.lastIndexOf('.');
    stem = dot > 0 ? name.substring(0, dot) : name;
  }

  /**
   * Writes the picture of each fault, and takes away those of an earlier result of this name: a
   * picture must not lie beside a result that does not speak of it.
   *
   * @throws shinline.cli.CoachException when one cannot be written
   */
  public FlagImages write(RepPictures pictures) {
    Set<String> written = new HashSet<>();
    for (RepPicture picture : pictures.all()) {
      if (picture.flag().isPresent()) {
        String name = name(picture.rep(), picture.flag().get());
        new WholeFile(folder.resolve(name)).write(picture.jpeg());
        written.add(name);
      }
    }
    removeOthers(written);
    return (rep, kind) -> Optional.of(name(rep, kind)).filter(written::contains);
  }

  private String name(int rep, FlagKind kind) {
    return stem + "-rep" + rep + "-" + kind.jsonName() + ".jpg";
  }

  private void removeOthers(Set<String> written) {
    String kinds =
        Arrays.stream(FlagKind.values()).map(FlagKind::jsonName).collect(Collectors.joining("|"));
    Pattern ours = Pattern.compile(Pattern.quote(stem) + "-rep[0-9]{1,3}-(" + kinds + ")\\.jpg");
    try (DirectoryStream<Path> files =
        Files.newDirectoryStream(folder, f -> ours.matcher(name(f)).matches())) {
      for (Path file : files) {
        if (!written.contains(name(file))) {
          Files.deleteIfExists(file);
        }
      }
    } catch (IOException e) {
      // An old picture that stays is untidy; it is no reason to lose the result.
      return;
    }
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName());
  }
}
