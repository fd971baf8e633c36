package shinline.cli.picture;

import java.awt.geom.AffineTransform;
import java.awt.geom.Point2D;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import shinline.metrics.result.SeriesTable.Column;
import shinline.metrics.track.BodyPoint;

/**
 * The athlete at one instant, as it is to be drawn: only what was seen.
 *
 * @param points pixels, y down, of the view it is asked for
 * @param numbers each in the unit its column's name ends with
 */
record PoseAt(Map<BodyPoint, Point2D> points, Map<Column, Double> numbers) {
  PoseAt {
    points = Map.copyOf(points);
    numbers = Map.copyOf(numbers);
  }

  Optional<Point2D> point(BodyPoint point) {
    return Optional.ofNullable(points.get(point));
  }

  Optional<Double> number(Column column) {
    return Optional.ofNullable(numbers.get(column));
  }

  /** The same pose with every point moved. */
  PoseAt moved(AffineTransform move) {
    if (move.isIdentity()) {
      return this;
    }
    Map<BodyPoint, Point2D> there = new EnumMap<>(BodyPoint.class);
    points.forEach((name, place) -> there.put(name, move.transform(place, null)));
    return new PoseAt(there, numbers);
  }

  Optional<Point2D> midHip() {
    return middle(BodyPoint.FRONT_HIP, BodyPoint.REAR_HIP);
  }

  Optional<Point2D> midShoulder() {
    return middle(BodyPoint.NEAR_SHOULDER, BodyPoint.FAR_SHOULDER);
  }

  private Optional<Point2D> middle(BodyPoint one, BodyPoint other) {
    return point(one)
        .flatMap(
            a ->
                point(other)
                    .map(
                        b ->
                            new Point2D.Double(
                                (a.getX() + b.getX()) / 2, (a.getY() + b.getY()) / 2)));
  }
}
