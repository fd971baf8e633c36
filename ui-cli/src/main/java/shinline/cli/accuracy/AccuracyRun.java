package shinline.cli.accuracy;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import shinline.cli.calibration.CalibrationFile;
import shinline.cli.check.ClipChecker;
import shinline.cli.context.CommandContext;
import shinline.cli.file.WholeFile;
import shinline.cli.outcome.ExitCode;
import shinline.cli.text.ModelWords;
import shinline.cli.words.Words;
import shinline.vision.pose.PoseModel;

/** Scores the clips of a folder against their truth, and reports it. */
public final class AccuracyRun {

  /** Where centimetres come from. */
  public enum Height {
    FROM_TRUTH,
    UNKNOWN
  }

  private final FolderScoring scoring;
  private final FolderScoring cameras;
  private final PoseModel model;

  public AccuracyRun(
      CommandContext surroundings, ClipChecker checker, PoseModel model, Height height) {
    scoring = new FolderScoring(surroundings, checker, model, height);
    cameras = new FolderScoring(surroundings, checker, model, height);
    this.model = model;
  }

  /**
   * Scores the folder and says so: a short table to the terminal, the page to its file.
   *
   * @param command the command line, for the page
   * @param grid a folder of clips from many cameras, for a table of their own
   * @throws shinline.cli.outcome.CoachException when the folder holds no truth file
   */
  public List<String> report(
      Path folder, Optional<Path> grid, String command, Optional<WholeFile> page) {
    scoring.over(new TruthFolder(folder));
    grid.ifPresent(more -> cameras.over(new TruthFolder(more)));
    if (scoring.scores().isEmpty()) {
      // An older page must not be replaced by one that holds nothing.
      return List.of(Words.say("accuracy.nothing"));
    }
    AccuracyReport report =
        new AccuracyReport(
            new Accuracy(scoring.scores()),
            command,
            ModelWords.of(model),
            scoring.unscored(),
            new CrossValidation(scoring.known(), CalibrationFile.shipped(model)).section(),
            grid.map(more -> new Accuracy(cameras.scores())));
    page.ifPresent(file -> file.write(report::write));
    return report.lines();
  }

  /** The first of 70, 2, 3, 4, 0 that any clip earned. */
  public ExitCode exitCode() {
    return scoring.exitCode().worse(cameras.exitCode());
  }
}
