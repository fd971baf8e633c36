package shinline.vision.pose;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * How one person's hips go down and come up again, in shares of stature. Knows nothing of what the
 * person does it for.
 */
final class VerticalTravel {
  /** Down and up by at least this much: a walker's hips bob by 3 % of stature. */
  private static final double LEAST = 0.06;

  /** The range is that of the last moments. */
  private static final double KEPT_S = 4;

  private final Deque<double[]> recent = new ArrayDeque<>();
  private double high = Double.NEGATIVE_INFINITY;
  private double low = Double.POSITIVE_INFINITY;
  private boolean down;
  private int times;
  private double travelled;

  /**
   * Adds a look.
   *
   * @param height of mid-hip, up, shares of stature; from any level
   */
  void add(double timeS, double height) {
    recent.addLast(new double[] {timeS, height});
    while (timeS - recent.getFirst()[0] > KEPT_S) {
      recent.removeFirst();
    }
    if (down) {
      low = Math.min(low, height);
      if (height - low >= LEAST) {
        times++;
        travelled += height - low;
        down = false;
        high = height;
      }
    } else {
      high = Math.max(high, height);
      if (high - height >= LEAST) {
        down = true;
        low = height;
      }
    }
  }

  /** How often the hips went down and came up. */
  int times() {
    return times;
  }

  /** Sum of the ways up, in shares of stature. */
  double travelled() {
    return travelled;
  }

  /** Between the highest and the lowest of the last seconds, share of stature. */
  double range() {
    double most = Double.NEGATIVE_INFINITY;
    double least = Double.POSITIVE_INFINITY;
    for (double[] look : recent) {
      most = Math.max(most, look[1]);
      least = Math.min(least, look[1]);
    }
    return recent.isEmpty() ? 0 : most - least;
  }
}
