package shinline.metrics.cleaning;

import java.util.function.UnaryOperator;
import shinline.metrics.geometry.Point;
import shinline.metrics.signal.Series;

/**
 * A cleaned point on the even time grid: x forward, y up, pixels.
 *
 * @param confidence the model's own 0…1, on the same grid
 * @param jitterPx root mean square of what the filter took out, one axis
 */
public record CleanPath(Series x, Series y, Series confidence, double jitterPx) {
  public boolean seen(int i) {
    return x.seen(i) && y.seen(i);
  }

  public Point at(int i) {
    return new Point(x.value(i), y.value(i));
  }

  /** The same path moved by offsets, one a grid point. */
  public CleanPath moved(double[] dx, double[] dy) {
    return new CleanPath(plus(x, dx), plus(y, dy), confidence, jitterPx);
  }

  private static Series plus(Series series, double[] add) {
    double[] value = new double[add.length];
    boolean[] seen = new boolean[add.length];
    for (int i = 0; i < add.length; i++) {
      seen[i] = series.seen(i);
      value[i] = seen[i] ? series.value(i) + add[i] : 0;
    }
    return Series.of(series.times(), value, seen);
  }

  /** The same path with each of its points put elsewhere. */
  CleanPath mapped(UnaryOperator<Point> place) {
    int n = x.size();
    double[] px = new double[n];
    double[] py = new double[n];
    boolean[] seen = new boolean[n];
    for (int i = 0; i < n; i++) {
      seen[i] = seen(i);
      if (seen[i]) {
        Point at = place.apply(at(i));
        px[i] = at.x();
        py[i] = at.y();
      }
    }
    return new CleanPath(
        Series.of(x.times(), px, seen), Series.of(y.times(), py, seen), confidence, jitterPx);
  }
}
