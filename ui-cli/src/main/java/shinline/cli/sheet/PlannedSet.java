package shinline.cli.sheet;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import shinline.cli.record.AthleteName;
import shinline.cli.text.Length;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.track.Side;
import shinline.metrics.training.Pain;
import shinline.metrics.training.Purpose;

/**
 * A row of the sheet: one set of one leg. What is empty takes a default later.
 *
 * @param row number in the sheet, from 1
 * @param clip file name; empty for a set judged by eye
 * @param others cells under headings this program does not know
 */
public record PlannedSet(
    int row,
    Optional<String> clip,
    AthleteName athlete,
    Side leg,
    Optional<LocalDate> date,
    Work work,
    Carried carried,
    Lengths lengths,
    Seen seen,
    Map<String, String> others) {

  /**
   * What was asked for.
   *
   * @param label of the set in the session
   */
  public record Work(
      Optional<String> step,
      Optional<String> label,
      Purpose purpose,
      Optional<Integer> sets,
      Optional<Integer> reps,
      Optional<String> target,
      Optional<String> tempo,
      Optional<String> depth) {}

  /** What the athlete carried. */
  public record Carried(Optional<Mass> load, Optional<LoadKind> kind, Optional<Mass> vest) {}

  /** Lengths in the picture. */
  public record Lengths(Optional<Length> height, Optional<Length> bench) {}

  /** What the coach saw and heard. */
  public record Seen(
      Optional<Integer> doneReps, Optional<Integer> cleanReps, Pain pain, Optional<String> note) {}

  public PlannedSet {
    others = Map.copyOf(others);
  }
}
