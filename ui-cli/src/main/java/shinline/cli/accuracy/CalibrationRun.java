package shinline.cli.accuracy;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.cli.calibration.CalibrationFile;
import shinline.cli.check.ClipChecker;
import shinline.cli.context.CommandContext;
import shinline.cli.file.WholeFile;
import shinline.cli.outcome.CoachException;
import shinline.cli.outcome.ExitCode;
import shinline.cli.words.Words;
import shinline.metrics.calibration.CalibratedValue;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.calibration.Provenance;
import shinline.vision.pose.PoseModel;

/** Fits a pose model's calibration to the clips of a folder, and writes it down. */
public final class CalibrationRun {
  private final FolderScoring scoring;
  private final Calibration base;

  public CalibrationRun(CommandContext context, ClipChecker checker, PoseModel model) {
    scoring = new FolderScoring(context, checker, model, AccuracyRun.Height.FROM_TRUTH);
    base = CalibrationFile.shipped(model);
  }

  /**
   * Measures every clip once, fits, writes the calibration and tells what became of it, on clips
   * left out of the fit above all.
   *
   * @param when the day the calibration is to carry; empty for the day of the newest clip or truth
   * @throws CoachException when no clip could be measured
   */
  public List<String> report(Path path, WholeFile out, Optional<LocalDate> when) {
    TruthFolder folder = new TruthFolder(path);
    scoring.over(folder);
    List<KnownClip> clips = scoring.known();
    if (clips.isEmpty()) {
      throw new CoachException(scoring.exitCode(), Words.say("calibrate.nothing"));
    }
    LocalDate day = when.orElseGet(folder::newestDay);
    List<String> names = clips.stream().map(c -> c.truth().clip()).sorted().toList();
    Calibration fitted = told(CalibrationFit.over(clips, base), names, day);
    out.write(writer -> CalibrationFile.write(fitted, writer));
    return new CrossValidation(clips, base).section();
  }

  /** The first of 70, 2, 3, 4, 0 that any clip earned. */
  public ExitCode exitCode() {
    return scoring.exitCode();
  }

  private Calibration told(CalibrationFit fit, List<String> clips, LocalDate day) {
    Map<CalibrationKey, CalibratedValue> values = new EnumMap<>(CalibrationKey.class);
    put(values, fit.offsets(), new Source("offsets", clips, day));
    put(values, fit.intervals(), new Source("intervals", clips, day));
    put(values, fit.limitValues(), new Source("limits", clips, day));
    return base.with(values);
  }

  /** What a fitted number says of itself; the id holds the day, so that fits do not mix. */
  private record Source(String part, List<String> clips, LocalDate day) {
    Provenance provenance() {
      return new Provenance(
          "fitted-" + part + "-" + day,
          Provenance.Kind.FITTED,
          Words.say("calibrate.how." + part),
          clips,
          day);
    }
  }

  private void put(
      Map<CalibrationKey, CalibratedValue> into,
      Map<CalibrationKey, Double> fitted,
      Source source) {
    Provenance from = source.provenance();
    fitted.forEach((key, value) -> into.put(key, base.told(key).refitted(value, from)));
  }
}
