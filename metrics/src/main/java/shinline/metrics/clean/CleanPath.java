package shinline.metrics.clean;

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

  /** The same path turned about the picture's lower left corner, counter-clockwise, radians. */
  CleanPath turned(double angle) {
    int n = x.size();
    double[] dx = new double[n];
    double[] dy = new double[n];
    double c = Math.cos(angle);
    double s = Math.sin(angle);
    for (int i = 0; i < n; i++) {
      if (seen(i)) {
        dx[i] = c * x.value(i) - s * y.value(i) - x.value(i);
        dy[i] = s * x.value(i) + c * y.value(i) - y.value(i);
      }
    }
    return moved(dx, dy);
  }
}
