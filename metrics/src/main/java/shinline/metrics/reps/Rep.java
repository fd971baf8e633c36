package shinline.metrics.reps;

/**
 * One rep: a descent of the hip and its return.
 *
 * @param index 1 for the first rep of the clip
 * @param topBefore hip height at the top before the descent, unit of the series
 * @param lowest hip height at the lowest sample
 * @param topAfter hip height at the top that follows, the rep's own end level
 */
public record Rep(
    int index, RepTimes times, Tempo tempo, double topBefore, double lowest, double topAfter) {

  /** Top minus lowest, in the unit of the series; above 0. */
  public double travel() {
    return topBefore - lowest;
  }
}
