package shinline.metrics.advice;

import java.util.List;
import java.util.Optional;

/** Nothing can be said of what follows a step that is not on the ladder. */
final class StepUnknownRule implements NextRule {

  @Override
  public Optional<Outcome> decide(Situation now) {
    return now.stepIsOnLadder()
        ? Optional.empty()
        : Optional.of(
            Outcome.of(Decision.STAY, now.again(), Rule.STEP_UNKNOWN, List.of(now.last().id()))
                .missing(new Missing.StepUnknown(now.step().id())));
  }
}
