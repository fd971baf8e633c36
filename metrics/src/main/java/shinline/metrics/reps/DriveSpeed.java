package shinline.metrics.reps;

import java.util.Optional;
import shinline.metrics.signal.SavitzkyGolay;
import shinline.metrics.signal.Series;

/**
 * Upward speed of mid-hip in the drive, in the unit of the series a second.
 *
 * @param mean height gained from the end of the hold to the end of the drive, over its time
 * @param peak largest slope of a local quadratic fit within the drive
 */
public record DriveSpeed(double mean, double peak) {

  /** Seven samples: a fifth of a second at 30 a second, half of a quick drive. */
  private static final SavitzkyGolay SLOPE = new SavitzkyGolay(7);

  private static final double TIME_SLACK_S = 1e-6;

  /**
   * @param hipHeight the even series in which the rep was found
   * @param stepS its time step, seconds
   * @return empty when a sample of the drive is missing or the drive lies between two samples
   */
  public static Optional<DriveSpeed> of(Series hipHeight, double stepS, RepTimes times) {
    double fromS = times.bottomEndS();
    double toS = times.endS();
    for (Series.Run run : hipHeight.runs()) {
      double[] t = hipHeight.times(run);
      if (t[0] > fromS || t[t.length - 1] < toS || toS <= fromS) {
        continue;
      }
      double[] h = hipHeight.values(run);
      double[] slope = SLOPE.slope(h, stepS);
      double peak = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < t.length; i++) {
        if (t[i] >= fromS - TIME_SLACK_S && t[i] <= toS + TIME_SLACK_S) {
          peak = Math.max(peak, slope[i]);
        }
      }
      if (!Double.isFinite(peak)) {
        return Optional.empty();
      }
      double mean = (height(t, h, toS) - height(t, h, fromS)) / (toS - fromS);
      return Optional.of(new DriveSpeed(mean, peak));
    }
    return Optional.empty();
  }

  /** Linear between samples, as the phase edges are. */
  private static double height(double[] t, double[] h, double atS) {
    int k = 0;
    while (k + 2 < t.length && t[k + 1] <= atS) {
      k++;
    }
    return h[k] + (h[k + 1] - h[k]) * (atS - t[k]) / (t[k + 1] - t[k]);
  }
}
