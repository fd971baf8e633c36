package shinline.metrics.advice;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.metrics.track.Side;

/** Two poor sessions of one leg at the same step, target and load: less. */
final class StepBackRule implements NextRule {

  @Override
  public Optional<Outcome> decide(Situation now) {
    List<Session> alike = now.sessions().stream().filter(s -> s.hasLoad(now.load())).toList();
    if (alike.size() < 2) {
      return Optional.empty();
    }
    Session last = alike.get(alike.size() - 1);
    Session before = alike.get(alike.size() - 2);
    return Stream.of(Side.values())
        .filter(leg -> poor(last, leg) && poor(before, leg))
        .findFirst()
        .map(leg -> back(now, lines(before, last, leg)));
  }

  private static boolean poor(Session session, Side leg) {
    return session.leg(leg).filter(LegSession::poor).isPresent();
  }

  private static List<String> lines(Session before, Session last, Side leg) {
    return Stream.of(before, last).flatMap(s -> s.leg(leg).orElseThrow().lines().stream()).toList();
  }

  private static Outcome back(Situation now, List<String> lines) {
    BigDecimal pct = now.ladder().limits().stepBackPct();
    Retreat retreat = new Retreat(now);
    return retreat
        .lighter(pct)
        .or(() -> retreat.back(pct))
        .map(p -> Outcome.of(Decision.STEP_BACK, p, Rule.FEW_CLEAN_TWICE, lines))
        .orElseGet(() -> Outcome.of(Decision.STAY, now.again(), Rule.FEW_CLEAN_TWICE, lines));
  }
}
