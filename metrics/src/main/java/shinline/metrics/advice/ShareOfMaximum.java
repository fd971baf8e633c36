package shinline.metrics.advice;

import java.util.Optional;
import shinline.metrics.ladder.Scheme;
import shinline.metrics.ladder.StepLoad;
import shinline.metrics.load.TrainingLoad;

/** Sets and reps of a step whose loads are shares of the three-rep maximum. */
record ShareOfMaximum(Situation now) {

  /** The maximum the step in force goes by; empty for other steps and when there is none. */
  Optional<ThreeRepMaximum> maximum() {
    return now.step().load() instanceof StepLoad.OfThreeRepMaximum loading
        ? ThreeRepMaximum.lastKnown(now.history(), now.ladder(), loading.maximumDays(), now.asOf())
        : Optional.empty();
  }

  /** Sets and reps for a load in the step in force. */
  Optional<Scheme> scheme(TrainingLoad load) {
    return now.step().load() instanceof StepLoad.OfThreeRepMaximum loading
        ? maximum().map(m -> scheme(loading, load, m))
        : Optional.empty();
  }

  /** Those of the first share the load is not above; of the last when it is above all. */
  static Scheme scheme(
      StepLoad.OfThreeRepMaximum loading, TrainingLoad load, ThreeRepMaximum maximum) {
    return loading.shares().stream()
        .filter(s -> load.mass().compareTo(maximum.mass().percent(s.upToPct())) <= 0)
        .findFirst()
        .orElse(loading.shares().get(loading.shares().size() - 1))
        .scheme();
  }
}
