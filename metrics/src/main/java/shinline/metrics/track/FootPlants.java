package shinline.metrics.track;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.metrics.geometry.Point;
import shinline.metrics.statistics.RobustStatistics;

/**
 * Where one point of the foot (ankle, heel or toe) rests on the front and on the rear foot: the
 * front foot is planted in one place for the whole set, the rear foot in another, so each sighting
 * belongs to the place it is nearer to, whatever the model calls it.
 */
record FootPlants(Point front, Point rear, double splitShare) {

  static Optional<FootPlants> of(PointPath a, PointPath b, double splitApartPx) {
    List<Double> fx = new ArrayList<>();
    List<Double> fy = new ArrayList<>();
    List<Double> rx = new ArrayList<>();
    List<Double> ry = new ArrayList<>();
    int both = 0;
    for (int i = 0; i < a.size(); i++) {
      if (!a.seen(i) || !b.seen(i)) {
        continue;
      }
      both++;
      if (Math.abs(a.x(i) - b.x(i)) < splitApartPx) {
        continue;
      }
      PointPath front = a.x(i) > b.x(i) ? a : b;
      PointPath rear = front == a ? b : a;
      fx.add(front.x(i));
      fy.add(front.y(i));
      rx.add(rear.x(i));
      ry.add(rear.y(i));
    }
    if (fx.size() < 5) {
      return Optional.empty();
    }
    return Optional.of(
        new FootPlants(
            new Point(
                RobustStatistics.mode(fx).getAsDouble(), RobustStatistics.mode(fy).getAsDouble()),
            new Point(
                RobustStatistics.mode(rx).getAsDouble(), RobustStatistics.mode(ry).getAsDouble()),
            fx.size() / (double) both));
  }

  /** Whether a sighting is on the front foot rather than on the rear one. */
  boolean onFront(PointPath path, int i) {
    return path.at(i).distanceTo(front) < path.at(i).distanceTo(rear);
  }

  /** Distance from the plant it belongs to, pixels. */
  double away(PointPath path, int i) {
    return path.at(i).distanceTo(onFront(path, i) ? front : rear);
  }
}
