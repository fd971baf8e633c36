package shinline.metrics.signal;

import shinline.metrics.statistics.RobustStatistics;

/**
 * Evenly spaced times. Phones record a variable frame rate while filters need a fixed one: a series
 * goes onto the grid, is filtered there, and comes back to the frames' own times. Both ways use the
 * shape-preserving cubic, inside a run of seen samples only; nothing is read across a missing
 * sample or beyond an end.
 *
 * @param startS time of the first point, seconds
 * @param stepS time between points, seconds, above 0
 * @param size number of points, 1 or more
 */
public record UniformTimeGrid(double startS, double stepS, int size) {

  /** Part of a step by which a point may miss a sample and still count as on it. */
  private static final double SLACK = 1e-6;

  public UniformTimeGrid {
    if (!Double.isFinite(startS) || !(stepS > 0) || size < 1) {
      throw new IllegalArgumentException(
          "grid from " + startS + " s, step " + stepS + " s, " + size + " points");
    }
  }

  /**
   * The grid whose first and last points are the first and last sample times, at the rate nearest
   * to the one asked for that makes this possible.
   *
   * @param rateHz points a second, about
   */
  public static UniformTimeGrid covering(Series series, double rateHz) {
    if (series.size() == 0 || !(rateHz > 0)) {
      throw new IllegalArgumentException(series + " at " + rateHz + " Hz");
    }
    double startS = series.timeS(0);
    double spanS = series.timeS(series.size() - 1) - startS;
    if (spanS == 0) {
      return new UniformTimeGrid(startS, 1 / rateHz, 1);
    }
    int steps = Math.max(1, (int) Math.round(spanS * rateHz));
    return new UniformTimeGrid(startS, spanS / steps, steps + 1);
  }

  /** The grid at the median rate of the series itself; the series has two samples or more. */
  public static UniformTimeGrid covering(Series series) {
    if (series.size() < 2) {
      throw new IllegalArgumentException(series + " has no rate");
    }
    double[] steps = LookRate.steps(series.times());
    return covering(series, 1 / RobustStatistics.median(steps).orElseThrow());
  }

  public double rateHz() {
    return 1 / stepS;
  }

  public double timeS(int i) {
    return startS + i * stepS;
  }

  public double[] times() {
    double[] times = new double[size];
    for (int i = 0; i < size; i++) {
      times[i] = timeS(i);
    }
    return times;
  }

  /** The series read at the grid's times. */
  public Series resample(Series series) {
    return read(series, times(), stepS * SLACK);
  }

  /**
   * A series on this grid read at other times, usually those of the frames.
   *
   * @throws IllegalArgumentException if the series is not on this grid
   */
  public Series back(Series even, double[] timesS) {
    if (even.size() != size || Math.abs(even.timeS(0) - startS) > stepS * SLACK) {
      throw new IllegalArgumentException(even + " is not on a grid of " + size + " points");
    }
    return read(even, timesS, stepS * SLACK);
  }

  private static Series read(Series series, double[] timesS, double slackS) {
    double[] value = new double[timesS.length];
    boolean[] seen = new boolean[timesS.length];
    for (Series.Run run : series.runs()) {
      double[] x = series.times(run);
      PchipInterpolator curve = new PchipInterpolator(x, series.values(run));
      double from = x[0] - slackS;
      double to = x[x.length - 1] + slackS;
      for (int i = 0; i < timesS.length; i++) {
        if (timesS[i] >= from && timesS[i] <= to) {
          value[i] = curve.at(timesS[i]);
          seen[i] = true;
        }
      }
    }
    return Series.of(timesS, value, seen);
  }
}
