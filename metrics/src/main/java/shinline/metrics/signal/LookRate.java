package shinline.metrics.signal;

import shinline.metrics.statistics.RobustStatistics;

/**
 * How closely a track was looked at where it moved. Looks lie farther apart where nothing much
 * happens, so that neither their mean distance nor the middle one tells what quick movement they
 * can show.
 */
public final class LookRate {
  /** This share of the steps is taken to be of quick movement, at least. */
  private static final double CLOSEST = 0.1;

  private LookRate() {}

  /**
   * Seconds between looks where they lie close.
   *
   * @param timesS rising, two or more
   */
  public static double closeStepS(double[] timesS) {
    return RobustStatistics.quantile(steps(timesS), CLOSEST).orElseThrow();
  }

  /** From each time to the next, seconds. */
  static double[] steps(double[] timesS) {
    double[] steps = new double[timesS.length - 1];
    for (int i = 0; i < steps.length; i++) {
      steps[i] = timesS[i + 1] - timesS[i];
    }
    return steps;
  }
}
