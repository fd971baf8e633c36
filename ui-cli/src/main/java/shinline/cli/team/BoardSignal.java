package shinline.cli.team;

import java.util.List;
import java.util.Optional;
import shinline.metrics.advice.Decision;
import shinline.metrics.training.SetCounts;
import shinline.metrics.training.SetEntry;

/** What the next set of a leg is to be like, by the last ones of the day (common practice). */
enum BoardSignal {
  SAME,
  LIGHTER,
  STOP,
  FILM_AGAIN;

  /**
   * @param day sets of one leg on one day, in the order they were done, at least one
   * @param decision of the advice
   */
  static BoardSignal of(List<SetEntry> day, Decision decision) {
    SetCounts last = day.get(day.size() - 1).counts();
    if (decision == Decision.STOP) {
      return STOP;
    } else if (AthleteSession.isTooDark(last)) {
      return FILM_AGAIN;
    } else if (!mostlyNotClean(last)) {
      return SAME;
    }
    Optional<SetCounts> before =
        day.size() < 2 ? Optional.empty() : Optional.of(day.get(day.size() - 2).counts());
    return before.filter(BoardSignal::mostlyNotClean).isPresent() ? STOP : LIGHTER;
  }

  /** Fewer than half of the judged reps clean. */
  private static boolean mostlyNotClean(SetCounts counts) {
    return 2 * counts.cleanReps() < counts.judged();
  }
}
