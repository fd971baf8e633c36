package shinline.metrics.advice;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import shinline.metrics.ladder.Ladder;
import shinline.metrics.ladder.Scheme;
import shinline.metrics.ladder.Step;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.TrainingHistory;

/**
 * Where an athlete with at least one work set stands.
 *
 * @param history up to the as-of date
 * @param last the last work set: its step and target are in force
 * @param step the step in force; one made up from the line when the ladder has none of that name
 * @param sessions at that step and target, by date; the last is the session of the last work set
 */
record Situation(
    Ladder ladder,
    TrainingHistory history,
    LocalDate asOf,
    RecordedSet last,
    Step step,
    List<Session> sessions) {

  String target() {
    return last.entry().asked().target();
  }

  int targetIndex() {
    return step.targets().indexOf(target());
  }

  /** The sessions at another target of the step in force. */
  List<Session> sessionsAt(String target) {
    return Session.of(history.workSets(), step, target, ladder.limits().sets());
  }

  Session session() {
    return sessions.get(sessions.size() - 1);
  }

  Optional<TrainingLoad> load() {
    return session().load();
  }

  long daysSinceLast() {
    return ChronoUnit.DAYS.between(last.date(), asOf);
  }

  boolean stepIsOnLadder() {
    return ladder.steps().contains(step);
  }

  /** Sets and reps in force: those asked of the last work set's leg. */
  Scheme scheme() {
    return session().leg(last.entry().leg()).orElseThrow().wanted();
  }

  /** Reps asked at this load before any were added, one at a time, for want of a heavier load. */
  int repsAtFirst() {
    int reps = scheme().reps();
    for (int i = sessions.size() - 2; i >= 0; i--) {
      Session earlier = sessions.get(i);
      int asked = earlier.legs().get(0).wanted().reps();
      if (!earlier.hasLoad(load()) || asked > reps || asked < reps - 1) {
        break;
      }
      reps = asked;
    }
    return reps;
  }

  /** Tempo in force: the line's, else the step's. */
  Optional<String> tempo() {
    return last.entry()
        .asked()
        .tempo()
        .or(() -> Optional.of(step.tempo()))
        .filter(t -> !t.isEmpty());
  }

  /** The same again. */
  Prescription again() {
    return with(target(), scheme(), load());
  }

  Prescription with(Optional<TrainingLoad> load) {
    return with(target(), scheme(), load);
  }

  Prescription with(String target, Scheme scheme, Optional<TrainingLoad> load) {
    return new Prescription(step.id(), target, scheme, tempo(), load, step.notes());
  }
}
