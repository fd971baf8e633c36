package shinline.metrics.advice;

import java.math.BigDecimal;
import shinline.metrics.ladder.AdviceLimits;
import shinline.metrics.training.RecordedSet;
import shinline.metrics.training.SetCounts;

/** How a set counts. */
enum SetQuality {
  /** Full in reps, enough of them judged, at most one of those not clean. */
  GOOD,
  NOT_GOOD,
  /** Too few reps were judged to say: it counts neither way. */
  TOO_DARK;

  static SetQuality of(RecordedSet set, AdviceLimits.Sets limits) {
    SetCounts counts = set.entry().counts();
    if (percent(counts.judged()).compareTo(times(limits.judgedPct(), counts.reps())) < 0) {
      return TOO_DARK;
    }
    boolean full = counts.reps() >= set.entry().asked().reps();
    return full && counts.notClean() <= limits.uncleanAllowed() ? GOOD : NOT_GOOD;
  }

  private static BigDecimal percent(int part) {
    return BigDecimal.valueOf(100L * part);
  }

  private static BigDecimal times(BigDecimal pct, int whole) {
    return pct.multiply(BigDecimal.valueOf(whole));
  }
}
