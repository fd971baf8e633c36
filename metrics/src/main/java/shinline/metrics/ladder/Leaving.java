package shinline.metrics.ladder;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;

/** What a step asks for, besides being earned, before the next target or step. */
public sealed interface Leaving {

  /** Nothing more. */
  record AtOnce() implements Leaving {}

  /** A gate on record, for example {@code hip-flexor-range}. */
  record GateOnRecord(String gate) implements Leaving {}

  /**
   * A load in each hand.
   *
   * @param load in each unit
   * @param bodyMassPct this share of body mass will do, where body mass is known and it is less
   */
  record LoadReached(Map<MassUnit, Mass> load, Optional<BigDecimal> bodyMassPct)
      implements Leaving {
    public LoadReached {
      load = Map.copyOf(load);
    }
  }

  /** Calendar weeks (Monday to Sunday) with a work session in the step, whatever the target. */
  record WeeksTrained(int weeks) implements Leaving {}

  /** The last step has nothing to leave for. */
  record Never() implements Leaving {}
}
