package shinline.cli.picture;

import shinline.metrics.fault.FlagKind;

/**
 * What a flagged instant looked like shortly before and after, for a strip of three.
 *
 * @param picture smaller than that of the fault
 */
public record Moment(int rep, FlagKind kind, When when, RepPicture picture) {
  /** On which side of the flagged instant. */
  public enum When {
    BEFORE(-1),
    AFTER(1);

    /** From a hold it reaches into the lowering and the drive of most reps (own choice). */
    static final double AWAY_S = 0.7;

    private final int sign;

    When(int sign) {
      this.sign = sign;
    }

    double of(double atS) {
      return atS + sign * AWAY_S;
    }
  }
}
