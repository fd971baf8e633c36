package shinline.metrics.advice;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import shinline.metrics.ladder.AdviceLimits;
import shinline.metrics.training.Mark;

/** After days without training, or after a clearance, less than the last time. */
final class BreakRule implements NextRule {

  @Override
  public Optional<Outcome> decide(Situation now) {
    AdviceLimits.Breaks limits = now.ladder().limits().breaks();
    long days = now.daysSinceLast();
    Optional<Mark> clearance =
        now.history()
            .last(Mark.Cleared.class::isInstance)
            .filter(c -> c.place().isAfter(now.last().place()));
    if (days > limits.halfAfterDays()) {
      return Optional.of(half(now, limits.halfPct(), Rule.LONG_BREAK, now.session().lines()));
    } else if (clearance.isPresent()) {
      List<String> lines = List.of(clearance.get().id(), now.last().id());
      return Optional.of(half(now, limits.halfPct(), Rule.FIRST_AFTER_CLEARANCE, lines));
    } else if (days > limits.lessAfterDays()) {
      return Optional.of(less(now, limits.lessPct()));
    } else if (days > limits.sameAfterDays()) {
      return Optional.of(
          Outcome.of(Decision.STAY, now.again(), Rule.SHORT_BREAK, now.session().lines()));
    }
    return Optional.empty();
  }

  private static Outcome half(Situation now, BigDecimal pct, Rule rule, List<String> lines) {
    Retreat retreat = new Retreat(now);
    return retreat
        .lighter(pct)
        .or(() -> retreat.back(pct))
        .map(p -> Outcome.of(Decision.EASE_BACK, p, rule, lines))
        .orElseGet(() -> Outcome.of(Decision.STAY, now.again(), rule, lines));
  }

  private static Outcome less(Situation now, BigDecimal pct) {
    List<String> lines = now.session().lines();
    return new Retreat(now)
        .lighter(pct)
        .map(p -> Outcome.of(Decision.EASE_BACK, p, Rule.BREAK, lines))
        .orElseGet(() -> Outcome.of(Decision.STAY, now.again(), Rule.BREAK, lines));
  }
}
