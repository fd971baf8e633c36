package shinline.metrics.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Everything else: the same again, with what is missing. */
final class StayRule implements NextRule {

  @Override
  public Optional<Outcome> decide(Situation now) {
    Session session = now.session();
    List<Missing> missing = new ArrayList<>();
    for (LegSession leg : session.legs()) {
      int dark = leg.darkSets();
      int lacking = leg.wanted().sets() - leg.goodSets() - dark;
      if (lacking > 0) {
        missing.add(new Missing.GoodSets(leg.leg(), lacking, leg.wanted().reps()));
      }
      if (dark > 0) {
        missing.add(new Missing.FilmAgain(leg.leg(), dark));
      }
    }
    if (EarnedRule.painMarked(now)) {
      missing.add(new Missing.PainlessSessions(1));
    } else if (!EarnedRule.painAskedAndNone(now)) {
      missing.add(new Missing.PainNotAsked());
    }
    Rule rule = !session.earned() ? Rule.NOT_EARNED : Rule.PAIN_NOT_ASKED;
    return Optional.of(
        Outcome.of(Decision.STAY, now.again(), rule, session.lines()).missing(missing));
  }
}
