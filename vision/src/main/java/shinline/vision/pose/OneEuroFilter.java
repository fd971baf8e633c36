package shinline.vision.pose;

/**
 * A low-pass filter whose cut-off grows with speed.
 *
 * <p>G. Casiez, N. Roussel, D. Vogel: 1€ Filter, CHI 2012, doi 10.1145/2207676.2208639. Causal, so
 * it lags: it steadies the region and never touches what is measured.
 */
final class OneEuroFilter {
  private final double minCutoffHz;
  private final double beta;
  private final double derivativeCutoffHz;

  private boolean started;
  private double lastTimeS;
  private double lastRaw;
  private double smoothed;
  private double smoothedSpeed;

  OneEuroFilter(double minCutoffHz, double beta, double derivativeCutoffHz) {
    this.minCutoffHz = minCutoffHz;
    this.beta = beta;
    this.derivativeCutoffHz = derivativeCutoffHz;
  }

  /**
   * Takes in one value.
   *
   * @param speedScale turns the value's unit into the one the filter's {@code beta} is meant for
   * @param timeS seconds; a time that is not after the last one gives the last answer again
   * @return the smoothed value
   */
  double next(double value, double speedScale, double timeS) {
    if (!started) {
      started = true;
      smoothed = value;
    } else if (timeS > lastTimeS) {
      double step = timeS - lastTimeS;
      double speed = (value - lastRaw) * speedScale / step;
      smoothedSpeed += share(derivativeCutoffHz, step) * (speed - smoothedSpeed);
      double cutoffHz = minCutoffHz + beta * Math.abs(smoothedSpeed);
      smoothed += share(cutoffHz, step) * (value - smoothed);
    } else {
      return smoothed;
    }
    lastRaw = value;
    lastTimeS = timeS;
    return smoothed;
  }

  /** How much of the new value a first-order low-pass lets in during one step. */
  private static double share(double cutoffHz, double stepS) {
    double timeConstant = 1 / (2 * Math.PI * cutoffHz);
    return 1 / (1 + timeConstant / stepS);
  }
}
