package shinline.metrics.reps;

/**
 * When the hip leaves its rest at the top: when it has come down by {@link RepParameters#LEVEL} of
 * the way to the bottom.
 *
 * <p>There it is still slow, and half a centimetre of error in one sample moves the crossing by a
 * tenth of a second. So all samples of the first part of the descent tell it: with a share s of the
 * way behind, asin √s rises evenly in time for a hip that swings from rest to rest like a pendulum,
 * and nearly so at the beginning of any smooth movement. A line is fitted to it by least squares,
 * each sample with the weight s (1 − s): what an error of its height does to asin √s.
 */
final class DescentStart {
  /** Nearer to the rest than this share of the way, samples are the rest's own noise. */
  private static final double NEAR = 0.015;

  /** Farther than this they belong to the middle of the descent. */
  private static final double FAR = 0.25;

  /** Fewer tell no line. */
  private static final int LEAST_SAMPLES = 4;

  private final double[] t;
  private final double[] h;
  private final double top;
  private final double low;

  /**
   * @param t times, seconds, rising
   * @param h heights at these times, up positive, any unit
   * @param top level of the rest
   * @param low level of the bottom, below it
   */
  DescentStart(double[] t, double[] h, double top, double low) {
    this.t = t;
    this.h = h;
    this.top = top;
    this.low = low;
  }

  /**
   * The start, seconds; by the two samples about it alone where too few others tell of it.
   *
   * @param above the last sample above the level; the next one lies below it
   */
  double timeS(int above) {
    int first = above + 1;
    while (first > 0 && share(first - 1) >= NEAR && share(first - 1) <= share(first)) {
      first--;
    }
    int last = above + 1;
    while (last + 1 < h.length && share(last + 1) > share(last) && share(last + 1) <= FAR) {
      last++;
    }
    if (last - first + 1 < LEAST_SAMPLES) {
      return crossing(above);
    }
    double weights = 0;
    double meanT = 0;
    double meanY = 0;
    for (int i = first; i <= last; i++) {
      double w = share(i) * (1 - share(i));
      weights += w;
      meanT += w * t[i];
      meanY += w * even(share(i));
    }
    meanT /= weights;
    meanY /= weights;
    double tt = 0;
    double ty = 0;
    for (int i = first; i <= last; i++) {
      double w = share(i) * (1 - share(i));
      tt += w * (t[i] - meanT) * (t[i] - meanT);
      ty += w * (t[i] - meanT) * (even(share(i)) - meanY);
    }
    double told = meanT + (even(RepParameters.LEVEL) - meanY) * tt / ty;
    // A little outside the samples the line may lead, but not far.
    return told >= t[first] - (t[last] - t[first]) / 2 && told <= t[last] ? told : crossing(above);
  }

  private double share(int i) {
    return (top - h[i]) / (top - low);
  }

  private static double even(double share) {
    return Math.asin(Math.sqrt(share));
  }

  /** Linear between two samples. */
  private double crossing(int above) {
    double level = top - RepParameters.LEVEL * (top - low);
    double fall = h[above] - h[above + 1];
    return fall == 0 ? t[above] : t[above] + (t[above + 1] - t[above]) * (h[above] - level) / fall;
  }
}
