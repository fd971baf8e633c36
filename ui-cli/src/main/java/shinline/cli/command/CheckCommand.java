package shinline.cli.command;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import shinline.cli.check.CheckOptions;
import shinline.cli.check.ClipChecker;
import shinline.cli.context.CommandContext;
import shinline.cli.file.FlagImages;
import shinline.cli.file.OutputFiles;
import shinline.cli.file.OutputPlan;
import shinline.cli.file.WholeFile;
import shinline.cli.format.RepCsv;
import shinline.cli.format.ResultDocument;
import shinline.cli.format.ResultJson;
import shinline.cli.format.SeriesCsv;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.outcome.Progress;
import shinline.cli.picture.AnnotatedClip;
import shinline.cli.picture.ClipPictures;
import shinline.cli.picture.Face;
import shinline.cli.picture.PictureFiles;
import shinline.cli.picture.RepPictures;
import shinline.cli.report.ReportPage;
import shinline.cli.text.Layout;
import shinline.cli.text.Length;
import shinline.cli.text.SetText;
import shinline.cli.text.Units;
import shinline.cli.words.Words;
import shinline.metrics.target.ShinPreset;
import shinline.vision.clip.ClipPart;
import shinline.vision.pose.PoseModel;

/** {@code shinline check}: measures clips and prints a table for each. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    versionProvider = Version.class,
    sortOptions = false)
public final class CheckCommand implements Callable<Integer> {
  private static final double SLOWEST_CAPTURE_FPS = 10;
  private static final double FASTEST_CAPTURE_FPS = 2000;

  @Spec private CommandSpec spec;

  @Parameters(arity = "1..*", paramLabel = "CLIP", descriptionKey = "clips")
  private List<Path> clips;

  @Mixin private FilmedOptions filmed;

  @Option(names = "--bar-disc", paramLabel = "DIAMETER")
  private @Nullable Length barDisc;

  @Option(names = "--from", paramLabel = "TIME", converter = ClipTimeConverter.class)
  private @Nullable Double from;

  @Option(names = "--to", paramLabel = "TIME", converter = ClipTimeConverter.class)
  private @Nullable Double to;

  @Mixin private LimitOptions limits;

  @Option(names = "--capture-fps", paramLabel = "N")
  private @Nullable Double captureFps;

  @Option(names = "--model", paramLabel = "MODEL", defaultValue = "accurate")
  private PoseModel model;

  @Option(names = "--json", paramLabel = "FILE")
  private @Nullable Path json;

  @Option(names = "--series", paramLabel = "FILE")
  private @Nullable Path series;

  @Option(names = "--csv", paramLabel = "FILE")
  private @Nullable Path csv;

  @Option(names = "--out", paramLabel = "FOLDER")
  private @Nullable Path out;

  @Option(names = "--no-report")
  private boolean noReport;

  @Option(names = "--annotated", paramLabel = "FILE.mp4")
  private @Nullable Path annotated;

  @Option(names = "--blur-face")
  private boolean blurFace;

  @Option(names = "--units", paramLabel = "UNITS", defaultValue = "metric")
  private Units units;

  private final CommandContext surroundings;
  private final ClipChecker checker;

  @SuppressWarnings("NullAway.Init") // picocli sets the clips, the spec and options with defaults
  public CheckCommand(CommandContext surroundings, ClipChecker checker) {
    this.surroundings = surroundings;
    this.checker = checker;
  }

  @Override
  public Integer call() {
    CheckOptions options = options();
    try (OutputFiles files = new OutputFiles(clips)) {
      return check(options, files).number();
    }
  }

  private ExitCode check(CheckOptions options, OutputFiles files) {
    OutputPlan plan =
        OutputPlan.of(
            clips,
            new OutputPlan.Asked(
                Optional.ofNullable(json),
                Optional.ofNullable(series),
                Optional.ofNullable(csv),
                Optional.ofNullable(out),
                Optional.ofNullable(annotated),
                noReport ? OutputPlan.Page.LEFT_OUT : OutputPlan.Page.WRITTEN),
            files);
    SetText text = new SetText(new Layout(surroundings.signs(), surroundings.paint(), units));
    return new EachInput<ClipReport>(
            surroundings,
            clip -> check(clip, wantsPictures(plan, clip) ? options.withPictures() : options),
            ClipReport::exitCode,
            text::lines,
            (report, clip) -> write(report, plan, clip, files))
        .run(clips, text::closing);
  }

  private ClipReport check(Path clip, CheckOptions options) {
    Progress progress = surroundings.progress(String.valueOf(clip.getFileName()));
    try {
      return checker.check(clip, options, progress);
    } finally {
      progress.end();
    }
  }

  /** A full disk under one clip's result must not lose the table of the next clip. */
  private ExitCode write(ClipReport report, OutputPlan plan, Path clip, OutputFiles files) {
    try {
      RepPictures pictures =
          report instanceof ClipReport.Measured m ? pictures(m, plan, clip) : RepPictures.none();
      if (report instanceof ClipReport.Measured measured) {
        for (WholeFile file : plan.json(clip)) {
          FlagImages images =
              file.isDevice()
                  ? FlagImages.none()
                  : new PictureFiles(file.path(), files).write(pictures);
          file.write(w -> ResultJson.write(measured, images, w));
        }
        for (WholeFile file : plan.series(clip)) {
          file.write(
              w ->
                  SeriesCsv.write(
                      measured.set().series(), measured.clip().heightPx(), measured.camera(), w));
        }
        for (WholeFile file : plan.reps(clip)) {
          file.write(w -> RepCsv.write(measured, w));
        }
        if (plan.annotated().isPresent()) {
          annotate(plan.annotated().get(), measured, clip);
        }
      } else if (report instanceof ClipReport.NotMeasured not) {
        for (WholeFile file : plan.json(clip)) {
          file.write(w -> ResultJson.write(not, w));
        }
        // Headings only: an older series must not lie beside a newer "not measured".
        for (WholeFile file : plan.series(clip)) {
          file.write(SeriesCsv::header);
        }
        for (WholeFile file : plan.reps(clip)) {
          file.write(RepCsv::header);
        }
      }
      if (report instanceof ClipReport.Unreadable) {
        withdraw(plan, clip, files);
      }
      return writePage(report, pictures, plan, clip);
    } catch (CoachException e) {
      return complain(e);
    }
  }

  private void withdraw(OutputPlan plan, Path clip, OutputFiles files) {
    EarlierResults earlier = new EarlierResults(clip);
    for (WholeFile file : plan.json(clip)) {
      if (earlier.mayGo() && !file.isDevice()) {
        new PictureFiles(file.path(), files).withdraw();
      }
      earlier.withdraw(file, ResultDocument.SCHEMA);
    }
    plan.series(clip).forEach(file -> earlier.withdraw(file, SeriesCsv.headings()));
    plan.reps(clip).forEach(file -> earlier.withdraw(file, RepCsv.headings()));
    Stream.concat(plan.page(clip).stream(), plan.annotated().stream())
        .forEach(file -> earlier.withdraw(file, ""));
    earlier.tell(surroundings);
  }

  private ExitCode complain(CoachException e) {
    surroundings.complain(String.valueOf(e.getMessage()));
    return e.exitCode();
  }

  /**
   * A page nobody asked for by name is a courtesy: a folder of clips that may not be written to, a
   * card or a share, must not turn a measured clip into a failure.
   */
  private ExitCode writePage(ClipReport report, RepPictures pictures, OutputPlan plan, Path clip) {
    Optional<WholeFile> file =
        report instanceof ClipReport.Unreadable ? Optional.empty() : plan.page(clip);
    if (file.isEmpty()) {
      return ExitCode.MEASURED;
    }
    ReportPage page = new ReportPage(units);
    try {
      file.get().makeFolder();
      if (report instanceof ClipReport.Measured measured) {
        file.get().write(w -> page.write(measured, pictures, w));
      } else if (report instanceof ClipReport.NotMeasured not) {
        file.get().write(w -> page.write(not, w));
      }
      surroundings.out().println(Words.say("check.page", file.get().path()));
      return ExitCode.MEASURED;
    } catch (CoachException e) {
      if (!plan.pageBesideClip()) {
        throw e;
      }
      surroundings.complain(Words.say("check.no-page", file.get().path()));
      return ExitCode.MEASURED;
    }
  }

  /** They are on the page, and beside a result. */
  private static boolean wantsPictures(OutputPlan plan, Path clip) {
    return plan.page(clip).isPresent() || !plan.json(clip).stream().allMatch(WholeFile::isDevice);
  }

  /** Pictures that cannot be drawn must not cost the coach the numbers. */
  private RepPictures pictures(ClipReport.Measured report, OutputPlan plan, Path clip) {
    if (!wantsPictures(plan, clip)) {
      return RepPictures.none();
    }
    try {
      return ClipPictures.of(clip, report, captureFps(), units, face());
    } catch (RuntimeException | LinkageError | OutOfMemoryError e) {
      surroundings.fault(Words.say("fault.in-pictures", clip.getFileName()), e);
      return RepPictures.none();
    }
  }

  private void annotate(WholeFile film, ClipReport.Measured report, Path clip) {
    Progress progress = surroundings.progress(String.valueOf(film.path().getFileName()));
    try {
      AnnotatedClip.write(film, clip, report, captureFps(), units, face(), progress);
    } finally {
      progress.end();
    }
  }

  private Face face() {
    return blurFace ? Face.BLURRED : Face.SHOWN;
  }

  private OptionalDouble captureFps() {
    return captureFps == null ? OptionalDouble.empty() : OptionalDouble.of(captureFps);
  }

  private CheckOptions options() {
    if (barDisc != null) {
      FilmedOptions.discWithin(spec.commandLine(), barDisc, "--bar-disc");
    }
    if (captureFps != null
        && !(captureFps >= SLOWEST_CAPTURE_FPS && captureFps <= FASTEST_CAPTURE_FPS)) {
      throw new ParameterException(
          spec.commandLine(), Words.say("check.capture-fps-range", captureFps.toString()));
    }
    return new CheckOptions(
        filmed.request(spec.commandLine()),
        model,
        captureFps(),
        part(),
        filmed.disc(spec.commandLine()),
        limits.limits(),
        barDisc == null ? CheckOptions.BAR_DISC_M : barDisc.metres(),
        false);
  }

  private ClipPart part() {
    double fromS = from == null ? 0 : from;
    double toS = to == null ? Double.POSITIVE_INFINITY : to;
    if (!(toS > fromS)) {
      throw new ParameterException(
          spec.commandLine(),
          Words.say("check.part-empty", Double.toString(fromS), Double.toString(toS)));
    }
    return new ClipPart(fromS, toS);
  }

  /** Words for completion scripts. */
  static final class ShinWords implements Iterable<String> {
    @Override
    public Iterator<String> iterator() {
      return Arrays.stream(ShinPreset.values()).map(ShinPreset::word).iterator();
    }
  }
}
