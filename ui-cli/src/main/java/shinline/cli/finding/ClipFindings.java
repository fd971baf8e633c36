package shinline.cli.finding;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import shinline.cli.check.CheckOptions;
import shinline.cli.check.ClipChecker;
import shinline.cli.file.Claim;
import shinline.cli.file.FlagImages;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.ResultName;
import shinline.cli.file.TextDigest;
import shinline.cli.file.WholeFile;
import shinline.cli.format.ResultJson;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.Progress;
import shinline.cli.picture.Bottoms;
import shinline.cli.picture.ClipPictures;
import shinline.cli.picture.Face;
import shinline.cli.picture.RepPicture;
import shinline.cli.picture.RepPictures;
import shinline.cli.record.Origin;
import shinline.cli.report.ReportPage;
import shinline.cli.text.Units;
import shinline.cli.words.Words;

/**
 * Measures clips, each once: what was found is kept under the digest of the clip, what was asked
 * and the program's version, and taken from there the next time. A finding is kept last, after its
 * page and pictures, so that whatever a stopped run left is either whole or done again.
 */
public final class ClipFindings {
  private static final int SHORT_KEY = 8;

  private final ClipChecker checker;
  private final String version;
  private final Path folder;
  private final Path kept;
  private final OutputFiles files;
  private final ClipDigests digests;
  private final Origin origin;

  /**
   * @param folder of the session's output
   * @param origin of the record the session belongs to
   */
  public ClipFindings(
      ClipChecker checker,
      String version,
      Path folder,
      OutputFiles files,
      ClipDigests digests,
      Origin origin) {
    this.checker = checker;
    this.version = version;
    this.folder = folder.resolve("clips");
    kept = folder.resolve("kept");
    this.files = files;
    this.digests = digests;
    this.origin = origin;
  }

  /** Where pages and pictures of clips are. */
  public Path folder() {
    return folder;
  }

  /** Identifies a clip's content with what is asked of it. */
  public record Key(String name) {}

  /**
   * @throws IOException when the clip cannot be read
   */
  public Key key(Path clip, CheckOptions options) throws IOException {
    return new Key(TextDigest.hex(digests.of(clip) + "\n" + options + "\n" + version));
  }

  /** What was found before, if all that was written of it is still there. */
  public Optional<ClipFinding> before(Key key) {
    try {
      return FindingJson.read(Files.readString(file(key)))
          .filter(f -> written(f).stream().allMatch(Files::isRegularFile));
    } catch (IOException none) {
      return Optional.empty();
    }
  }

  /** Every file that was written of a finding. */
  public List<Path> written(ClipFinding finding) {
    ClipFinding.Files of = finding.files();
    return Stream.concat(
            Stream.of(of.page(), of.data(), of.best(), of.worst())
                .flatMap(Optional::stream)
                .map(folder::resolve),
            of.kept().stream().map(kept::resolve))
        .toList();
  }

  /** The picture of the best bottom. */
  public Optional<Path> best(ClipFinding finding) {
    return finding.files().best().map(folder::resolve);
  }

  private Path file(Key key) {
    return kept.resolve(name(key));
  }

  private static String name(Key key) {
    return key.name() + ".json";
  }

  /** Measures, writes page and pictures, and keeps the finding. */
  public ClipFinding measure(
      Path clip,
      Key key,
      CheckOptions options,
      Function<Throwable, ClipFinding> failed,
      Progress progress) {
    try {
      ClipReport report = checker.check(clip, options.withPictures(), progress);
      ClipFinding finding = FindingReading.of(report, version);
      String stem = ResultName.of(clip) + "-" + key.name().substring(0, SHORT_KEY);
      if (report instanceof ClipReport.Measured measured) {
        finding = finding.with(write(measured, clip, stem, key, options));
      } else if (report instanceof ClipReport.NotMeasured not) {
        WholeFile page = place(stem + ".html");
        page.write(w -> new ReportPage(Units.METRIC, origin).write(not, w));
        finding =
            finding.with(
                new ClipFinding.Files(
                    Optional.of(stem + ".html"),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(name(key))));
      }
      if (finding.state() != ClipFinding.State.UNREADABLE) {
        String json = FindingJson.write(finding);
        WholeFile file = files.file(file(key), Claim.OURS);
        file.makeFolder();
        file.write(w -> w.write(json));
      }
      return finding;
    } catch (CoachException e) {
      return ClipFinding.without(
          ClipFinding.State.NOT_WRITTEN,
          String.valueOf(e.getMessage()),
          Words.say("session.failed-write.do"));
    } catch (RuntimeException | LinkageError | OutOfMemoryError e) {
      return failed.apply(e);
    }
  }

  private ClipFinding.Files write(
      ClipReport.Measured report, Path clip, String stem, Key key, CheckOptions options) {
    RepPictures pictures =
        ClipPictures.of(clip, report, options.captureFps(), Units.METRIC, Face.SHOWN);
    place(stem + ".html")
        .write(w -> new ReportPage(Units.METRIC, origin).write(report, pictures, w));
    place(stem + ".json").write(w -> ResultJson.write(report, FlagImages.none(), w));
    Bottoms bottoms = Bottoms.of(report.set().reps(), pictures);
    return new ClipFinding.Files(
        Optional.of(stem + ".html"),
        Optional.of(stem + ".json"),
        bottoms.best().map(p -> picture(p, stem + "-best.jpg")),
        bottoms.worst().map(p -> picture(p, stem + "-worst.jpg")),
        Optional.of(name(key)));
  }

  private String picture(RepPicture picture, String name) {
    place(name).write(picture.jpeg());
    return name;
  }

  private WholeFile place(String name) {
    WholeFile file = files.file(folder.resolve(name), Claim.OURS);
    file.makeFolder();
    return file;
  }
}
