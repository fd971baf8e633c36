package shinline.metrics.advice;

import java.util.Optional;

/** One rule of what is next; they are asked in order, and the first that holds decides. */
interface NextRule {
  /** The outcome, when the rule holds. */
  Optional<Outcome> decide(Situation now);
}
