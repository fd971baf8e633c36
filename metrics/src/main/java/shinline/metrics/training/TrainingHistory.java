package shinline.metrics.training;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Everything on record of one athlete that what is next depends on.
 *
 * @param sets by date, then by order of lines
 * @param marks by date, then by order of lines
 */
public record TrainingHistory(AthleteProfile profile, List<RecordedSet> sets, List<Mark> marks) {

  public TrainingHistory {
    sets = sets.stream().sorted(Comparator.comparing(RecordedSet::place)).toList();
    marks = marks.stream().sorted(Comparator.comparing(Mark::place)).toList();
  }

  /** What was known on a day. */
  public TrainingHistory until(LocalDate day) {
    return new TrainingHistory(
        profile,
        sets.stream().filter(s -> !s.date().isAfter(day)).toList(),
        marks.stream().filter(m -> !m.date().isAfter(day)).toList());
  }

  public List<RecordedSet> workSets() {
    return sets.stream().filter(s -> s.entry().purpose() == Purpose.WORK).toList();
  }

  /** The latest mark of a kind. */
  public Optional<Mark> last(Predicate<Mark.Kind> kind) {
    return marks.stream().filter(m -> kind.test(m.kind())).reduce((a, b) -> b);
  }
}
