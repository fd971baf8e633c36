package shinline.cli.accuracy;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import shinline.cli.outcome.CoachException;
import shinline.cli.words.Words;

/** A folder of clips {@code NAME.mp4}, each with its {@code NAME.truth.json} beside it. */
record TruthFolder(Path folder) {
  private static final String TRUTH = ".truth.json";

  /** A clip and its truth; either file may be missing or bad. */
  record Pair(Path truth, Path clip) {
    String name() {
      return String.valueOf(clip.getFileName());
    }
  }

  /**
   * In the order of their names.
   *
   * @throws CoachException when the folder cannot be read, or holds no truth file
   */
  List<Pair> pairs() {
    if (!Files.isDirectory(folder)) {
      throw CoachException.usage(Words.say("truth.no-folder", folder));
    }
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder, "*" + TRUTH)) {
      stream.forEach(files::add);
    } catch (IOException | DirectoryIteratorException e) {
      throw CoachException.usage(Words.say("truth.folder-closed", folder));
    }
    if (files.isEmpty()) {
      throw CoachException.usage(Words.say("truth.none", folder));
    }
    files.sort(null);
    return files.stream().map(this::pair).toList();
  }

  private Pair pair(Path truth) {
    String name = String.valueOf(truth.getFileName());
    return new Pair(
        truth, folder.resolve(name.substring(0, name.length() - TRUTH.length()) + ".mp4"));
  }

  /** The day on which the newest of the clips and truth files was made, in universal time. */
  LocalDate newestDay() {
    LocalDate newest = LocalDate.EPOCH;
    for (Pair pair : pairs()) {
      for (Path file : List.of(pair.truth(), pair.clip())) {
        LocalDate day = day(file);
        newest = day.isAfter(newest) ? day : newest;
      }
    }
    return newest;
  }

  private static LocalDate day(Path file) {
    try {
      return LocalDate.ofInstant(Files.getLastModifiedTime(file).toInstant(), ZoneOffset.UTC);
    } catch (IOException e) {
      // A clip that is missing is complained of when it is measured.
      return LocalDate.EPOCH;
    }
  }
}
