package shinline.cli.accuracy;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.cli.check.CheckOptions;
import shinline.cli.check.ClipChecker;
import shinline.cli.check.ModelChoice;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.outcome.Progress;
import shinline.metrics.analysis.SetRequest;
import shinline.metrics.result.SetUp;

/**
 * Checks every clip of a folder that has its truth beside it, and scores what was told. A clip or a
 * truth file that is no good is complained of and left out; the others go on.
 */
public final class AccuracyRun {
  private static final String TRUTH = ".truth.json";

  /** Where centimetres come from. */
  public enum Height {
    FROM_TRUTH,
    UNKNOWN
  }

  private final CommandContext surroundings;
  private final ClipChecker checker;
  private final ModelChoice model;
  private final Height height;
  private final List<ClipScore> scores = new ArrayList<>();
  private final CrossValidation crossValidation = new CrossValidation();
  private final List<String> unscored = new ArrayList<>();
  private ExitCode worst = ExitCode.MEASURED;

  public AccuracyRun(
      CommandContext surroundings, ClipChecker checker, ModelChoice model, Height height) {
    this.surroundings = surroundings;
    this.checker = checker;
    this.model = model;
    this.height = height;
  }

  /**
   * @param command the command line, for the page
   * @throws CoachException when the folder holds no truth file, or no clip could be scored
   */
  AccuracyReport over(Path folder, String command) {
    for (Path file : truthFiles(folder)) {
      String name = String.valueOf(file.getFileName());
      String clip = name.substring(0, name.length() - TRUTH.length()) + ".mp4";
      try {
        score(file, folder.resolve(clip));
      } catch (CoachException e) {
        complain(clip, String.valueOf(e.getMessage()), e.exitCode());
      } catch (RuntimeException | LinkageError | OutOfMemoryError e) {
        surroundings.fault(clip + ": ", e);
        unscored.add(clip + " (the program failed)");
        worst = worst.worse(ExitCode.INTERNAL);
      }
    }
    return new AccuracyReport(
        new Accuracy(scores), command, model.word(), unscored, crossValidation);
  }

  /** The first of 70, 2, 3, 4, 0 that any clip earned. */
  public ExitCode exitCode() {
    return worst;
  }

  /** Clips whose result could be held against the truth. */
  public int scored() {
    return scores.size();
  }

  private void score(Path truthFile, Path clip) {
    Truth truth = TruthReader.read(truthFile);
    if (!Files.isRegularFile(clip)) {
      throw new CoachException(
          ExitCode.UNREADABLE, "there is a truth file, but no clip. Put the clip beside it.");
    }
    ClipReport report = check(clip, truth);
    if (report instanceof ClipReport.Measured measured) {
      ClipScore score = ClipScore.of(truth, measured.set());
      scores.add(score);
      // The truth's pixels are those of each frame, a steadied track's those of the still view.
      if (measured.set().setUp().cameraHold() != SetUp.CameraHold.STEADIED) {
        measured.footage().ifPresent(footage -> crossValidation.add(score, footage));
      }
    } else if (report instanceof ClipReport.NotMeasured not) {
      // The clip was fine, so each of its reps counts as missed.
      scores.add(ClipScore.nothing(truth, "not measured: " + not.why().reason()));
      worst = worst.worse(ExitCode.NOT_MEASURED);
    } else if (report instanceof ClipReport.Unreadable unreadable) {
      throw new CoachException(
          ExitCode.UNREADABLE, unreadable.reason() + ": " + unreadable.advice() + ".");
    }
  }

  private ClipReport check(Path clip, Truth truth) {
    SetRequest plain = SetRequest.plain();
    SetRequest request =
        height == Height.FROM_TRUTH ? plain.withAthleteHeightM(truth.athleteHeightM()) : plain;
    Progress progress = surroundings.progress(String.valueOf(clip.getFileName()));
    try {
      return checker.check(
          clip,
          new CheckOptions(request, model, java.util.OptionalDouble.empty(), Optional.empty()),
          progress);
    } finally {
      progress.end();
    }
  }

  private void complain(String clip, String why, ExitCode code) {
    surroundings.complain(clip + ": " + why);
    unscored.add(clip);
    worst = worst.worse(code);
  }

  private static List<Path> truthFiles(Path folder) {
    if (!Files.isDirectory(folder)) {
      throw CoachException.usage(
          folder + " is no folder. Name one that holds clips with their truth.");
    }
    List<Path> files = new ArrayList<>();
    try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder, "*" + TRUTH)) {
      stream.forEach(files::add);
    } catch (IOException | DirectoryIteratorException e) {
      throw CoachException.usage(folder + " cannot be read. Look whether it may be.");
    }
    if (files.isEmpty()) {
      throw CoachException.usage(
          "no truth file is in "
              + folder
              + ". A clip NAME.mp4 is scored when NAME.truth.json lies beside it.");
    }
    files.sort(null);
    return files;
  }

  /** Scores the folder and says so: a short table to the terminal, the page to its file. */
  public List<String> report(
      Path folder, String command, Optional<shinline.cli.file.WholeFile> page) {
    AccuracyReport report = over(folder, command);
    if (scores.isEmpty()) {
      // An older page must not be replaced by one that holds nothing.
      return List.of("No clip could be scored.");
    }
    page.ifPresent(file -> file.write(report::write));
    return report.lines();
  }
}
