package shinline.vision.clip;

import java.util.Arrays;
import org.hipparchus.stat.descriptive.rank.Median;

/** The times of a clip's frames, and what they say of its frame rate. */
public final class FrameTimes {
  /** Spread of the intervals, in parts of their median, from which a rate counts as variable. */
  private static final double VARIABLE_SPREAD = 0.2;

  /** A few dropped frames do not make a rate variable: the spread leaves a twentieth out. */
  private static final double LEFT_OUT = 0.05;

  private double[] times = new double[1024];
  private int count;

  void add(double timeS) {
    if (count == times.length) {
      times = Arrays.copyOf(times, 2 * count);
    }
    times[count++] = timeS;
  }

  public int count() {
    return count;
  }

  /** From the first frame to the end of the last, which is taken to last as long as most do. */
  public double durationS() {
    return count == 0 ? 0 : times[count - 1] - times[0] + medianIntervalS();
  }

  /** 0 for fewer than two frames. */
  public double medianFps() {
    return count < 2 ? 0 : 1 / medianIntervalS();
  }

  public boolean variable() {
    if (count < 3) {
      return false;
    }
    double[] sorted = intervals();
    int aside = (int) (LEFT_OUT * sorted.length);
    double spread = sorted[sorted.length - 1 - aside] - sorted[aside];
    return spread > VARIABLE_SPREAD * medianIntervalS();
  }

  private double medianIntervalS() {
    return count < 2 ? 0 : new Median().evaluate(intervals());
  }

  /** Ascending. */
  private double[] intervals() {
    double[] intervals = new double[Math.max(0, count - 1)];
    for (int i = 0; i < intervals.length; i++) {
      intervals[i] = times[i + 1] - times[i];
    }
    Arrays.sort(intervals);
    return intervals;
  }
}
