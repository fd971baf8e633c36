package shinline.cli.finding;

import java.util.List;
import java.util.Optional;
import shinline.cli.outcome.ExitCode;
import shinline.cli.record.MeasuredSet;
import shinline.metrics.track.Side;
import shinline.metrics.training.SetCounts;

/**
 * What is known of a clip once it was measured, or could not be.
 *
 * @param headline one sentence: how the set went, or why it was not measured
 * @param toDo what to do about a clip without numbers; empty for one with
 * @param cue one thing to say to the athlete
 * @param counts empty for a clip without numbers
 * @param measured means over the reps
 * @param shownLeg the front leg, where the picture leaves no doubt of it
 * @param files names of what was written of it
 */
public record ClipFinding(
    State state,
    String headline,
    Optional<String> toDo,
    Optional<String> cue,
    Optional<SetCounts> counts,
    MeasuredSet measured,
    Optional<Side> shownLeg,
    List<String> warnings,
    Files files) {

  /** How it went. */
  public enum State {
    MEASURED(ExitCode.MEASURED),
    NOT_MEASURED(ExitCode.NOT_MEASURED),
    UNREADABLE(ExitCode.UNREADABLE),
    /** What was found could not be written. */
    NOT_WRITTEN(ExitCode.USAGE),
    /** The program failed. */
    FAILED(ExitCode.INTERNAL);

    private final ExitCode exitCode;

    State(ExitCode exitCode) {
      this.exitCode = exitCode;
    }

    public ExitCode exitCode() {
      return exitCode;
    }
  }

  /**
   * Files of a clip in the folder of clips, by name.
   *
   * @param data the result, as docs/result-format.md describes it
   * @param best picture of the best bottom
   * @param worst picture of the worst bottom, where one is worse than the best
   * @param kept the finding itself, in the folder of findings
   */
  public record Files(
      Optional<String> page,
      Optional<String> data,
      Optional<String> best,
      Optional<String> worst,
      Optional<String> kept) {
    public static final Files NONE =
        new Files(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
  }

  public ClipFinding {
    warnings = List.copyOf(warnings);
  }

  /** A clip without numbers. */
  public static ClipFinding without(State state, String headline, String toDo) {
    return new ClipFinding(
        state,
        headline,
        Optional.of(toDo),
        Optional.empty(),
        Optional.empty(),
        MeasuredSet.nothing(),
        Optional.empty(),
        List.of(),
        Files.NONE);
  }

  public ClipFinding with(Files written) {
    return new ClipFinding(
        state, headline, toDo, cue, counts, measured, shownLeg, warnings, written);
  }
}
