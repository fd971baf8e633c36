package shinline.cli.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.TrainingHistory;

/**
 * What the record says of one athlete, corrections and reviews applied.
 *
 * @param name as first written on record; as asked for when there is no line
 * @param overrules the coach's own decisions, by date, then by order of lines
 * @param problems with lines of the athlete, which do not count
 */
public record AthleteRecord(
    AthleteName name,
    TrainingHistory history,
    List<Overrule> overrules,
    List<LineProblem> problems) {

  /** The coach's last decision up to a day, unless a work set was done since. */
  public Optional<Overrule> overruleInForce(LocalDate day) {
    Optional<LocalDate> lastSession =
        history.until(day).workSets().stream().map(RecordedSet::date).reduce((a, b) -> b);
    return overrules.stream()
        .filter(o -> !o.date().isAfter(day))
        .filter(o -> lastSession.filter(last -> last.isAfter(o.date())).isEmpty())
        .reduce((a, b) -> b);
  }
}
