package shinline.metrics.advice;

import java.util.List;
import java.util.Optional;
import shinline.metrics.training.Pain;

/** Every asked set of the last session good on both legs, and no pain: on. */
final class EarnedRule implements NextRule {

  @Override
  public Optional<Outcome> decide(Situation now) {
    if (!now.session().earned() || !painAskedAndNone(now)) {
      return Optional.empty();
    }
    return Optional.of(onwards(now).afterAll(Rule.EARNED, now.session().lines()));
  }

  /** Asked of at least one work set of the day, and marked at none. */
  static boolean painAskedAndNone(Situation now) {
    return said(now).contains(Pain.NO) && !painMarked(now);
  }

  /** Marked at a work set of the day, and cleared since. */
  static boolean painMarked(Situation now) {
    return said(now).contains(Pain.YES);
  }

  private static List<Pain> said(Situation now) {
    return now.history().workSets().stream()
        .filter(s -> s.date().equals(now.last().date()))
        .map(s -> s.entry().pain())
        .toList();
  }

  private static Outcome onwards(Situation now) {
    if (!now.step().isLoaded()) {
      return new NextLevel(now).outcome();
    } else if (now.load().isEmpty()) {
      return Outcome.of(Decision.STAY, now.again(), Rule.LOAD_UNKNOWN, now.session().lines())
          .missing(new Missing.LoadUnknown());
    }
    LeavingCheck leaving = new LeavingCheck(now);
    return leaving.met()
        ? new NextLevel(now).outcome().afterAll(Rule.LEAVING_CONDITION, leaving.lines())
        : new Raise(now, now.load().orElseThrow()).outcome();
  }
}
