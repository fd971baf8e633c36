package shinline.cli.picture;

import java.awt.geom.Point2D;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import shinline.cli.crossing.PictureAxis;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.result.SeriesTable.Column;
import shinline.metrics.track.BodyPoint;

/**
 * The athlete at any instant of the clip. The pose model does not look at every frame, so between
 * two looks points and numbers move in a straight line.
 */
final class PoseTimeline {
  /** Looks farther apart than this are not joined: the athlete was lost in between. */
  private static final double JOINED_S = 0.35;

  /** A look this close stands for an instant before the first or after the last look. */
  private static final double NEAR_S = 0.1;

  private final SeriesTable series;
  private final PictureAxis axis;

  /**
   * @param heightPx height of the upright picture
   */
  PoseTimeline(SeriesTable series, int heightPx) {
    this.series = series;
    axis = new PictureAxis(heightPx);
  }

  PoseAt at(double timeS) {
    int after = series.firstRowNotBefore(timeS);
    if (after == series.rows()) {
      return after > 0 && timeS - series.timeS(after - 1) <= NEAR_S
          ? between(after - 1, after - 1, 0)
          : nothing();
    }
    double gap = series.timeS(after) - timeS;
    if (gap == 0) {
      return between(after, after, 0);
    }
    if (after == 0) {
      return gap <= NEAR_S ? between(0, 0, 0) : nothing();
    }
    double span = series.timeS(after) - series.timeS(after - 1);
    return span > JOINED_S ? nothing() : between(after - 1, after, 1 - gap / span);
  }

  private PoseAt between(int before, int after, double share) {
    Map<BodyPoint, Point2D> points = new EnumMap<>(BodyPoint.class);
    for (BodyPoint point : BodyPoint.values()) {
      OptionalDouble x = mix(series.x(point, before), series.x(point, after), share);
      OptionalDouble y = mix(series.y(point, before), series.y(point, after), share);
      if (x.isPresent() && y.isPresent()) {
        points.put(point, new Point2D.Double(x.getAsDouble(), axis.rowOf(y.getAsDouble())));
      }
    }
    Map<Column, Double> numbers = new EnumMap<>(Column.class);
    for (Column column : Column.values()) {
      mix(series.value(column, before), series.value(column, after), share)
          .ifPresent(v -> numbers.put(column, v));
    }
    return new PoseAt(points, numbers);
  }

  private static OptionalDouble mix(OptionalDouble a, OptionalDouble b, double share) {
    return a.isPresent() && b.isPresent()
        ? OptionalDouble.of((1 - share) * a.getAsDouble() + share * b.getAsDouble())
        : OptionalDouble.empty();
  }

  private static PoseAt nothing() {
    return new PoseAt(Map.of(), Map.of());
  }
}
