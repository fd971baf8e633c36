package shinline.metrics.ladder;

import java.math.BigDecimal;

/**
 * The numbers of the rules of what is next. All are common practice; the coach's file may change
 * each.
 *
 * @param stepBackPct load after two poor sessions, % of the last
 * @param nextTargetPct load at the next target, % of the last
 * @param goodForDays days a prescription is good for
 */
public record AdviceLimits(
    Breaks breaks,
    Raises raises,
    Sets sets,
    BigDecimal stepBackPct,
    BigDecimal nextTargetPct,
    int goodForDays) {

  /**
   * @param halfAfterDays a break of more days takes the load down to {@code halfPct}
   * @param lessAfterDays a break of more days takes the load down to {@code lessPct}
   * @param sameAfterDays a break of more days means the same again
   * @param halfPct load after a long break or a clearance, % of the last
   * @param lessPct load after a shorter break, % of the last
   */
  public record Breaks(
      int halfAfterDays,
      int lessAfterDays,
      int sameAfterDays,
      BigDecimal halfPct,
      BigDecimal lessPct) {}

  /**
   * @param everyDays days from one raise to the next
   * @param painlessSessions sessions without pain after a clearance before a raise
   * @param gapPct with nothing at hand for the weekly raise, the next load may be this much heavier
   * @param moreReps reps a set may grow by when no load is at hand
   */
  public record Raises(int everyDays, int painlessSessions, BigDecimal gapPct, int moreReps) {}

  /**
   * @param uncleanAllowed judged reps of a good set that may be less than clean
   * @param judgedPct least share of a set's reps that must be judged
   * @param poorPct with a smaller share of its judged reps clean, a session is poor
   */
  public record Sets(int uncleanAllowed, BigDecimal judgedPct, BigDecimal poorPct) {}
}
