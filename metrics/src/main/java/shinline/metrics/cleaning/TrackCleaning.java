package shinline.metrics.cleaning;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.signal.ButterworthLowPass;
import shinline.metrics.signal.GapFill;
import shinline.metrics.signal.HampelFilter;
import shinline.metrics.signal.LookRate;
import shinline.metrics.signal.ResidualAnalysis;
import shinline.metrics.signal.Series;
import shinline.metrics.signal.UniformTimeGrid;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.LegTrack;
import shinline.metrics.track.PointPath;

/**
 * Outliers out, short gaps bridged, an even time grid, a zero-phase low-pass. In this order: an
 * outlier would bend the bridge, and a filter needs even steps.
 */
public final class TrackCleaning {
  /**
   * Rate of the even grid, Hz, at least; interpolation adds no detail, but keeps the filter well
   * inside its range.
   */
  private static final double LEAST_RATE_HZ = 30;

  /**
   * An outlier is at least this far off its neighbours, share of stature; below, the model's own
   * jitter is left to the filter.
   */
  private final double outlierFloor;

  public TrackCleaning(Calibration calibration) {
    outlierFloor = calibration.value(CalibrationKey.CLEANING_OUTLIER);
  }

  /**
   * @param track two frames or more
   */
  public CleanTrack clean(LegTrack track) {
    double[] times = track.timeS();
    Series clock = Series.of(times, times);
    double rateHz = 1 / LookRate.closeStepS(times);
    UniformTimeGrid grid = UniformTimeGrid.covering(clock, Math.max(rateHz, LEAST_RATE_HZ));
    HampelFilter hampel = new HampelFilter(outlierFloor * track.bodyPx());
    Map<BodyPoint, Series> xs = new EnumMap<>(BodyPoint.class);
    Map<BodyPoint, Series> ys = new EnumMap<>(BodyPoint.class);
    for (BodyPoint point : BodyPoint.values()) {
      PointPath path = track.path(point);
      xs.put(point, even(path.xSeries(times), hampel, grid));
      ys.put(point, even(path.ySeries(times), hampel, grid));
    }
    double cutoff = cutoff(xs, ys, rateHz, grid);
    ButterworthLowPass filter = ButterworthLowPass.twoPass(cutoff, grid.rateHz());
    Map<BodyPoint, CleanPath> paths = new EnumMap<>(BodyPoint.class);
    for (BodyPoint point : BodyPoint.values()) {
      Series x = xs.get(point);
      Series y = ys.get(point);
      if (x == null || y == null) {
        throw new IllegalStateException("no series for " + point);
      }
      Series smoothX = filter.zeroPhase(x);
      Series smoothY = filter.zeroPhase(y);
      paths.put(
          point,
          new CleanPath(
              smoothX,
              smoothY,
              grid.resample(GapFill.fill(confidence(track.path(point), times))),
              Math.sqrt((squares(x, smoothX) + squares(y, smoothY)) / 2)));
    }
    return new CleanTrack(track, grid, paths, spanS -> settled(cutoff, grid.rateHz(), spanS));
  }

  /** The filter passes about 2·fc/rate of white jitter's power; the rest it has taken out. */
  private static double settled(double cutoffHz, double rateHz, double spanS) {
    double passed = Math.min(1, 2 * cutoffHz / rateHz);
    double independent = Math.max(1, spanS * 2 * cutoffHz);
    return Math.sqrt(passed / (1 - Math.min(0.9, passed)) / independent);
  }

  private static Series even(Series series, HampelFilter hampel, UniformTimeGrid grid) {
    return grid.resample(GapFill.fill(hampel.clean(series)));
  }

  private static Series confidence(PointPath path, double[] times) {
    double[] value = new double[times.length];
    boolean[] seen = new boolean[times.length];
    for (int i = 0; i < times.length; i++) {
      seen[i] = path.seen(i);
      value[i] = seen[i] ? path.confidence(i) : 0;
    }
    return Series.of(times, value, seen);
  }

  /**
   * One cut-off for the clip: the middle of what the points that matter ask for, so that no angle
   * mixes two delays of different softness; never more than a third of the frames' own rate.
   */
  private static double cutoff(
      Map<BodyPoint, Series> xs,
      Map<BodyPoint, Series> ys,
      double frameRate,
      UniformTimeGrid grid) {
    List<Double> found = new ArrayList<>();
    for (BodyPoint point :
        new BodyPoint[] {BodyPoint.FRONT_HIP, BodyPoint.FRONT_KNEE, BodyPoint.NEAR_SHOULDER}) {
      for (Map<BodyPoint, Series> axis : List.of(xs, ys)) {
        Series series = axis.get(point);
        if (series == null) {
          continue;
        }
        for (Series.Run run : series.runs()) {
          if (run.size() >= 2 * grid.rateHz()) {
            found.add(ResidualAnalysis.choose(series.values(run), grid.rateHz()).cutoffHz());
          }
        }
      }
    }
    double chosen = RobustStatistics.median(found).orElse(ResidualAnalysis.MOST_HZ);
    return Math.min(chosen, frameRate / 3);
  }

  private static double squares(Series raw, Series smooth) {
    double sum = 0;
    int n = 0;
    for (int i = 0; i < raw.size(); i++) {
      if (raw.seen(i) && smooth.seen(i)) {
        double d = raw.value(i) - smooth.value(i);
        sum += d * d;
        n++;
      }
    }
    return n == 0 ? 0 : sum / n;
  }
}
