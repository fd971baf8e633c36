package shinline.metrics.track;

import java.util.function.IntFunction;
import shinline.metrics.geometry.Point;

/** Point paths from a formula. */
final class Paths {
  private Paths() {}

  static PointPath of(int frames, IntFunction<Point> at) {
    PointPath.Builder path = PointPath.ofSize(frames);
    for (int i = 0; i < frames; i++) {
      path.put(i, at.apply(i).x(), at.apply(i).y(), 0.9);
    }
    return path.build();
  }

  static double[] times(int frames, double fps) {
    double[] t = new double[frames];
    for (int i = 0; i < frames; i++) {
      t[i] = i / fps;
    }
    return t;
  }
}
