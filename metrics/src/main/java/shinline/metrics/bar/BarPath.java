package shinline.metrics.bar;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.metrics.geometry.Point;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.signal.ButterworthLowPass;
import shinline.metrics.signal.GapFill;
import shinline.metrics.signal.HampelFilter;
import shinline.metrics.signal.LookRate;
import shinline.metrics.signal.Series;
import shinline.metrics.signal.UniformTimeGrid;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.Side;

/**
 * The path of the bar's end in metres at its own distance from the camera: its disc's known size is
 * its scale, whatever the athlete's is. Cleaned as the body's track is: outliers out, short gaps
 * bridged, an even grid, a zero-phase low-pass.
 *
 * @param grid even times of both series
 * @param forwardM ahead of any fixed place, metres
 * @param upM above any fixed place, metres
 */
public record BarPath(UniformTimeGrid grid, Series forwardM, Series upM) {
  /** Fewer looks are no path. */
  private static final int FEWEST = 15;

  /** A place this far off its neighbours is another rim's, share of the diameter. */
  private static final double OUTLIER = 0.02;

  /**
   * A rim is placed to a fraction of a pixel, so only the middle of a quick drive's speed needs
   * smoothing; the joints' own cut-off, 4 to 6 Hz, at its upper end.
   */
  private static final double CUTOFF_HZ = 6;

  /**
   * Empty when it was seen in too few looks.
   *
   * @param grid the body's
   * @param facing where the athlete faces
   * @param view what the camera makes of the athlete's side plane; a camera that is turned, not
   *     moved, turns every plane the same, so that it holds at the bar's distance, too
   */
  public static Optional<BarPath> of(
      BarTrack track, UniformTimeGrid grid, Side facing, ViewGeometry view) {
    int n = track.looks().size();
    if (n < FEWEST) {
      return Optional.empty();
    }
    double sign = facing == Side.RIGHT ? 1 : -1;
    double[] t = new double[n];
    double[] x = new double[n];
    double[] y = new double[n];
    List<Double> perMetre = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      BarTrack.Look look = track.looks().get(i);
      Point seen = new Point(sign * look.centre().x(), look.centre().y());
      Point real = view.real(seen);
      t[i] = look.timeS();
      x[i] = real.x();
      y[i] = real.y();
      // The circle of an ellipse's area: a view that squares the picture up keeps areas' ratios.
      double across = look.diameterPx() * Math.sqrt(look.roundness()) * view.enlargement(seen);
      perMetre.add(across / track.diameterM());
    }
    double scale = RobustStatistics.median(perMetre).orElseThrow();
    HampelFilter hampel = new HampelFilter(OUTLIER * track.diameterM());
    double cutoff = Math.min(CUTOFF_HZ, 1 / (2.2 * LookRate.closeStepS(t)));
    ButterworthLowPass filter = ButterworthLowPass.twoPass(cutoff, grid.rateHz());
    Series forward = even(t, x, scale, hampel, grid);
    Series up = even(t, y, scale, hampel, grid);
    return Optional.of(new BarPath(grid, filter.zeroPhase(forward), filter.zeroPhase(up)));
  }

  private static Series even(
      double[] t, double[] px, double perMetre, HampelFilter hampel, UniformTimeGrid grid) {
    double[] metres = new double[px.length];
    for (int i = 0; i < px.length; i++) {
      metres[i] = px[i] / perMetre;
    }
    return grid.resample(GapFill.fill(hampel.clean(gapped(t, metres))));
  }

  /**
   * Looks that did not see the disc are not in the track: a gap in time is put in where they were.
   */
  private static Series gapped(double[] t, double[] value) {
    List<Double> times = new ArrayList<>();
    List<Double> values = new ArrayList<>();
    List<Boolean> seen = new ArrayList<>();
    for (int i = 0; i < t.length; i++) {
      if (i > 0 && t[i] - t[i - 1] > GapFill.LONGEST_S) {
        times.add((t[i] + t[i - 1]) / 2);
        values.add(0.0);
        seen.add(false);
      }
      times.add(t[i]);
      values.add(value[i]);
      seen.add(true);
    }
    double[] at = times.stream().mapToDouble(Double::doubleValue).toArray();
    double[] v = values.stream().mapToDouble(Double::doubleValue).toArray();
    boolean[] s = new boolean[at.length];
    for (int i = 0; i < s.length; i++) {
      s[i] = seen.get(i);
    }
    return Series.of(at, v, s);
  }
}
