package shinline.cli.accuracy;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.cli.calibration.CalibrationFile;
import shinline.cli.check.CheckOptions;
import shinline.cli.check.ClipChecker;
import shinline.cli.context.CommandContext;
import shinline.cli.outcome.ClipReport;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.outcome.Progress;
import shinline.cli.text.RefusalWords;
import shinline.cli.words.Words;
import shinline.metrics.analysis.SetRequest;
import shinline.vision.clip.ClipPart;
import shinline.vision.pose.PoseModel;

/**
 * Checks every clip of a folder that has its truth beside it, once, and scores what was told. A
 * clip or a truth file that is no good is complained of and left out; the others go on.
 */
final class FolderScoring {

  private final CommandContext surroundings;
  private final ClipChecker checker;
  private final PoseModel model;
  private final AccuracyRun.Height height;
  private final List<ClipScore> scores = new ArrayList<>();
  private final List<KnownClip> known = new ArrayList<>();
  private final List<String> unscored = new ArrayList<>();
  private ExitCode worst = ExitCode.MEASURED;

  FolderScoring(
      CommandContext surroundings,
      ClipChecker checker,
      PoseModel model,
      AccuracyRun.Height height) {
    this.surroundings = surroundings;
    this.checker = checker;
    this.model = model;
    this.height = height;
  }

  /**
   * @throws CoachException when the folder holds no truth file
   */
  void over(TruthFolder folder) {
    for (TruthFolder.Pair pair : folder.pairs()) {
      String clip = pair.name();
      try {
        score(pair.truth(), pair.clip());
      } catch (CoachException e) {
        complain(clip, String.valueOf(e.getMessage()), e.exitCode());
      } catch (RuntimeException | LinkageError | OutOfMemoryError e) {
        surroundings.fault(Words.say("fault.in-clip", clip), e);
        unscored.add(Words.say("accuracy.failed", clip));
        worst = worst.worse(ExitCode.INTERNAL);
      }
    }
  }

  /** The first of 70, 2, 3, 4, 0 that any clip earned. */
  ExitCode exitCode() {
    return worst;
  }

  /** Of every clip whose result could be held against its truth. */
  List<ClipScore> scores() {
    return List.copyOf(scores);
  }

  /** Of these, the ones that can be measured again. */
  List<KnownClip> known() {
    return List.copyOf(known);
  }

  /** Clips that could not be scored, and why. */
  List<String> unscored() {
    return List.copyOf(unscored);
  }

  private void score(Path truthFile, Path clip) {
    Truth truth = TruthReader.read(truthFile);
    if (!Files.isRegularFile(clip)) {
      throw new CoachException(ExitCode.UNREADABLE, Words.say("accuracy.no-clip"));
    }
    ClipReport report = check(clip, truth);
    if (report instanceof ClipReport.Measured measured) {
      ClipScore score = ClipScore.of(truth, measured.set());
      scores.add(score);
      measured
          .footage()
          .ifPresent(
              footage ->
                  known.add(
                      KnownClip.of(
                          score, measured.set(), footage, CalibrationFile.shipped(model))));
    } else if (report instanceof ClipReport.NotMeasured not) {
      // The clip was fine, so each of its reps counts as missed.
      scores.add(
          ClipScore.nothing(
              truth, Words.say("accuracy.not-measured", RefusalWords.reason(not.why()))));
      worst = worst.worse(ExitCode.NOT_MEASURED);
    } else if (report instanceof ClipReport.Unreadable unreadable) {
      throw new CoachException(
          ExitCode.UNREADABLE,
          Words.say("accuracy.unreadable", unreadable.reason(), unreadable.advice()));
    }
  }

  private ClipReport check(Path clip, Truth truth) {
    SetRequest plain = SetRequest.plain();
    SetRequest request =
        height == AccuracyRun.Height.FROM_TRUTH
            ? plain.withAthleteHeightM(truth.athleteHeightM())
            : plain;
    Progress progress = surroundings.progress(String.valueOf(clip.getFileName()));
    try {
      return checker.check(
          clip,
          new CheckOptions(
              request, model, java.util.OptionalDouble.empty(), ClipPart.WHOLE, Optional.empty()),
          progress);
    } finally {
      progress.end();
    }
  }

  private void complain(String clip, String why, ExitCode code) {
    surroundings.complain(Words.say("accuracy.complaint", clip, why));
    unscored.add(clip);
    worst = worst.worse(code);
  }
}
