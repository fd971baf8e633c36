package shinline.metrics.advice;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import shinline.metrics.track.Side;

/** Both legs have to be on record in the last session at this step and target. */
final class LegMissingRule implements NextRule {

  @Override
  public Optional<Outcome> decide(Situation now) {
    Session session = now.session();
    List<Missing> missing =
        Stream.of(Side.values())
            .filter(leg -> session.leg(leg).isEmpty())
            .<Missing>map(leg -> new Missing.Leg(leg, session.date()))
            .toList();
    return missing.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Outcome.of(Decision.NOT_ENOUGH, now.again(), Rule.LEG_MISSING, session.lines())
                .missing(missing));
  }
}
