package shinline.cli.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import shinline.cli.check.PhotoChecker;
import shinline.cli.check.PhotoOptions;
import shinline.cli.context.CommandContext;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.OutputPlan;
import shinline.cli.file.PhotoPlan;
import shinline.cli.file.WholeFile;
import shinline.cli.format.ResultDocument;
import shinline.cli.format.ResultJson;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.outcome.PhotoReport;
import shinline.cli.picture.Face;
import shinline.cli.picture.PosturePicture;
import shinline.cli.report.PosturePage;
import shinline.cli.text.Layout;
import shinline.cli.text.PostureText;
import shinline.cli.text.SetText;
import shinline.cli.text.Units;
import shinline.cli.words.Words;
import shinline.vision.pose.PoseModel;

/** {@code shinline photo}: measures one posture in each still picture. */
@Command(
    name = "photo",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class PhotoCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "PICTURE", descriptionKey = "pictures")
  private List<Path> photos;

  @Mixin private FilmedOptions filmed;

  @Mixin private PixelLimit limit;

  @Option(names = "--model", paramLabel = "MODEL", defaultValue = "accurate")
  private PoseModel model;

  @Option(names = "--json", paramLabel = "FILE")
  private @Nullable Path json;

  @Option(names = "--out", paramLabel = "FOLDER")
  private @Nullable Path out;

  @Option(names = "--no-report")
  private boolean noReport;

  @Option(names = "--blur-face")
  private boolean blurFace;

  @Option(
      names = "--units",
      paramLabel = "UNITS",
      defaultValue = "metric",
      descriptionKey = "shinline.check.units")
  private Units units;

  private final CommandContext surroundings;
  private final PhotoChecker checker;

  @SuppressWarnings("NullAway.Init") // picocli sets the pictures, the spec and the options
  public PhotoCommand(CommandContext surroundings, PhotoChecker checker) {
    this.surroundings = surroundings;
    this.checker = checker;
  }

  @Override
  public Integer call() {
    PhotoOptions options =
        new PhotoOptions(
            filmed.request(spec.commandLine()),
            model,
            filmed.disc(spec.commandLine()),
            limit.pixels());
    try (OutputFiles files = new OutputFiles(photos)) {
      return check(options, files).number();
    }
  }

  private ExitCode check(PhotoOptions options, OutputFiles files) {
    PhotoPlan plan =
        PhotoPlan.of(
            photos,
            new PhotoPlan.Asked(
                Optional.ofNullable(json),
                Optional.ofNullable(out),
                noReport ? OutputPlan.Page.LEFT_OUT : OutputPlan.Page.WRITTEN),
            files);
    Layout layout = new Layout(surroundings.signs(), surroundings.paint(), units);
    PostureText text = new PostureText(layout);
    return new EachInput<PhotoReport>(
            surroundings,
            photo -> checker.check(photo, options),
            PhotoReport::exitCode,
            text::lines,
            (report, photo) -> write(report, plan, photo))
        .run(photos, new SetText(layout)::closing);
  }

  private ExitCode write(PhotoReport report, PhotoPlan plan, Path photo) {
    try {
      if (report instanceof PhotoReport.Measured measured) {
        write(measured, plan, photo);
      } else if (report instanceof PhotoReport.NotMeasured not) {
        for (WholeFile file : plan.json(photo)) {
          file.write(w -> ResultJson.write(not, w));
        }
        plan.drawn(photo).ifPresent(drawn -> drawn.withdraw(""));
        page(plan, photo, w -> new PosturePage(units).write(not, w));
      } else {
        withdraw(plan, photo);
      }
      return ExitCode.MEASURED;
    } catch (CoachException e) {
      surroundings.complain(String.valueOf(e.getMessage()));
      return e.exitCode();
    }
  }

  private void write(PhotoReport.Measured report, PhotoPlan plan, Path photo) {
    Optional<PosturePicture> picture = picture(report, plan, photo);
    Optional<String> image =
        picture.isPresent() ? drawn(picture.get(), plan, photo) : Optional.empty();
    for (WholeFile file : plan.json(photo)) {
      // A name stands for a file beside: a result elsewhere has no picture beside it.
      Optional<String> beside =
          image.filter(name -> Files.exists(file.path().toAbsolutePath().resolveSibling(name)));
      file.write(w -> ResultJson.write(report, beside, w));
    }
    page(plan, photo, w -> new PosturePage(units).write(report, picture, w));
  }

  /** A picture that cannot be drawn must not cost the coach the numbers. */
  private Optional<PosturePicture> picture(
      PhotoReport.Measured report, PhotoPlan plan, Path photo) {
    if (plan.drawn(photo).isEmpty()) {
      return Optional.empty();
    }
    try {
      return PosturePicture.of(photo, report, units, blurFace ? Face.BLURRED : Face.SHOWN);
    } catch (RuntimeException | LinkageError | OutOfMemoryError e) {
      surroundings.fault(Words.say("fault.in-pictures", photo.getFileName()), e);
      return Optional.empty();
    }
  }

  /** The name of the file; empty where nothing could be written. */
  private Optional<String> drawn(PosturePicture picture, PhotoPlan plan, Path photo) {
    Optional<WholeFile> file = plan.drawn(photo);
    boolean written = file.isPresent() && courtesy(plan, file.get(), f -> f.write(picture.jpeg()));
    if (written) {
      surroundings.out().println(Words.say("photo.drawn", file.get().path()));
    }
    return written ? file.map(f -> String.valueOf(f.path().getFileName())) : Optional.empty();
  }

  private void page(PhotoPlan plan, Path photo, WholeFile.Content content) {
    plan.page(photo)
        .filter(file -> courtesy(plan, file, f -> f.write(content)))
        .ifPresent(f -> surroundings.out().println(Words.say("check.page", f.path())));
  }

  /** Puts something into a file. */
  private interface Writing {
    void into(WholeFile file);
  }

  /**
   * What nobody asked for by name is a courtesy: a folder of pictures that may not be written to
   * must not turn a measured posture into a failure.
   */
  private boolean courtesy(PhotoPlan plan, WholeFile file, Writing writing) {
    try {
      file.makeFolder();
      writing.into(file);
      return true;
    } catch (CoachException e) {
      if (!plan.besidePhoto()) {
        throw e;
      }
      surroundings.complain(Words.say("check.no-page", file.path()));
      return false;
    }
  }

  private void withdraw(PhotoPlan plan, Path photo) {
    EarlierResults earlier = new EarlierResults(photo);
    plan.json(photo).forEach(file -> earlier.withdraw(file, ResultDocument.SCHEMA));
    Stream.concat(plan.page(photo).stream(), plan.drawn(photo).stream())
        .forEach(file -> earlier.withdraw(file, ""));
    earlier.tell(surroundings);
  }
}
