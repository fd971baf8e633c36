package shinline.metrics.judgement;

/**
 * How sure a verdict must be.
 *
 * @param straddleShare a value nearer to a limit than this share of its ± is too close to call; 0
 *     (judge the bare value) to 1 (call only what ± excludes). ± is 1.96 standard deviations, so
 *     the default of 0.5 leaves the value's side of the limit right about 84 times in 100 at the
 *     very edge of the zone, and more often everywhere beyond it. A share of 1 would be right 97
 *     times in 100 but would answer "unclear" for reps a whole ± clear of the limit, which a coach
 *     reads as no answer. Our own choice.
 */
public record JudgeParameters(double straddleShare) {
  public JudgeParameters {
    if (!(straddleShare >= 0 && straddleShare <= 1)) {
      throw new IllegalArgumentException("straddle share " + straddleShare + " is not in 0 to 1");
    }
  }

  public static JudgeParameters standard() {
    return new JudgeParameters(0.5);
  }
}
