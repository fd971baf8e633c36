package shinline.metrics.advice;

import java.math.BigDecimal;
import java.time.temporal.IsoFields;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.metrics.ladder.Leaving;
import shinline.metrics.load.LoadKind;
import shinline.metrics.load.Mass;
import shinline.metrics.load.TrainingLoad;
import shinline.metrics.training.Mark;
import shinline.metrics.training.RecordedSet;

/** Whether the step in force may be left, once earned. */
record LeavingCheck(Situation now) {
  private static final BigDecimal HALF = new BigDecimal("0.5");

  boolean met() {
    Leaving leaving = now.step().leaving();
    if (leaving instanceof Leaving.GateOnRecord gate) {
      return passed(gate.gate()).isPresent();
    } else if (leaving instanceof Leaving.LoadReached reached) {
      return now.load().filter(l -> reached(reached, l)).isPresent();
    } else if (leaving instanceof Leaving.WeeksTrained trained) {
      return weeks() >= trained.weeks();
    }
    return leaving instanceof Leaving.AtOnce;
  }

  /** Lines the answer rests on. */
  List<String> lines() {
    return now.step().leaving() instanceof Leaving.WeeksTrained
        ? inStep().map(RecordedSet::id).toList()
        : now.session().lines();
  }

  /** The gate on record. */
  Optional<Mark> passed(String gate) {
    return now.history().last(k -> k instanceof Mark.GatePassed p && p.gate().equals(gate));
  }

  /** A vest counts half for each hand: that is what a dumbbell there would add. */
  private boolean reached(Leaving.LoadReached reached, TrainingLoad load) {
    Mass limit = reached.load().get(load.mass().unit());
    if (limit == null || load.kind() != LoadKind.EACH_HAND) {
      return false;
    }
    Optional<Mass> bodyShare =
        now.history()
            .profile()
            .bodyMass()
            .flatMap(m -> reached.bodyMassPct().map(m::percent))
            .filter(m -> m.compareTo(limit) < 0);
    Mass carried = load.vest().map(v -> load.mass().plus(v.times(HALF))).orElse(load.mass());
    return carried.compareTo(bodyShare.orElse(limit)) >= 0;
  }

  /** Calendar weeks, Monday to Sunday, with a work session in the step. */
  private long weeks() {
    return inStep()
        .map(
            s ->
                s.date().get(IsoFields.WEEK_BASED_YEAR) * 100
                    + s.date().get(IsoFields.WEEK_OF_WEEK_BASED_YEAR))
        .distinct()
        .count();
  }

  private Stream<RecordedSet> inStep() {
    return now.history().workSets().stream().filter(s -> s.entry().step().equals(now.step().id()));
  }
}
