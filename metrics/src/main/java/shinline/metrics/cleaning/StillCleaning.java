package shinline.metrics.cleaning;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import shinline.metrics.signal.Series;
import shinline.metrics.signal.UniformTimeGrid;
import shinline.metrics.statistics.RobustStatistics;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.LegTrack;
import shinline.metrics.track.PointPath;

/**
 * Many looks at one still picture become one place for each point: their median. The looks differ
 * in what they cut out and whether they mirror it, none of which moves the athlete; so far as their
 * answers differ, the model does not know. That spread is kept as the jitter, whole: what all looks
 * get wrong in the same way does not shrink with their number.
 */
public final class StillCleaning {
  /** A point that fewer than this share of the looks see is not seen. */
  private static final double LEAST_SEEN = 0.5;

  private StillCleaning() {}

  /**
   * @param track two looks or more, at even times
   * @return the same places at the time of each look
   */
  public static CleanTrack clean(LegTrack track) {
    double[] times = track.timeS();
    UniformTimeGrid grid = UniformTimeGrid.covering(Series.of(times, times));
    Map<BodyPoint, CleanPath> paths = new EnumMap<>(BodyPoint.class);
    for (BodyPoint point : BodyPoint.values()) {
      paths.put(point, still(track.path(point), grid));
    }
    return new CleanTrack(track, grid, paths, spanS -> 1);
  }

  private static CleanPath still(PointPath path, UniformTimeGrid grid) {
    double[] x = seen(path, path::x);
    double[] y = seen(path, path::y);
    double[] confidence = seen(path, path::confidence);
    if (x.length == 0 || x.length < LEAST_SEEN * path.size()) {
      Series none = constant(grid, 0, false);
      return new CleanPath(none, none, none, 0);
    }
    double spreadX = RobustStatistics.spread(x).orElseThrow();
    double spreadY = RobustStatistics.spread(y).orElseThrow();
    double jitter = Math.hypot(spreadX, spreadY) / Math.sqrt(2);
    return new CleanPath(
        constant(grid, RobustStatistics.median(x).orElseThrow(), true),
        constant(grid, RobustStatistics.median(y).orElseThrow(), true),
        constant(grid, RobustStatistics.median(confidence).orElseThrow(), true),
        jitter);
  }

  private static double[] seen(PointPath path, IntToDoubleFunction value) {
    return IntStream.range(0, path.size()).filter(path::seen).mapToDouble(value).toArray();
  }

  private static Series constant(UniformTimeGrid grid, double value, boolean isSeen) {
    double[] values = new double[grid.size()];
    boolean[] seen = new boolean[grid.size()];
    Arrays.fill(values, value);
    Arrays.fill(seen, isSeen);
    return Series.of(grid.times(), values, seen);
  }
}
