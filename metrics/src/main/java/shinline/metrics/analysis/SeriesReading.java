package shinline.metrics.analysis;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shinline.metrics.cleaning.CleanPath;
import shinline.metrics.cleaning.CleanTrack;
import shinline.metrics.geometry.ViewGeometry;
import shinline.metrics.kinematics.Kinematics;
import shinline.metrics.reps.Rep;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.result.SeriesTable.Column;
import shinline.metrics.signal.Series;
import shinline.metrics.signal.UniformTimeGrid;
import shinline.metrics.track.BodyPoint;
import shinline.metrics.track.LegTrack;
import shinline.metrics.track.Side;

/** Brings the even grid back to the frames that were looked at. */
final class SeriesReading {
  private SeriesReading() {}

  static SeriesTable of(LegTrack legs, Body body, Scale scale, ViewGeometry view, List<Rep> reps) {
    double[] times = legs.timeS();
    Kinematics k = body.kinematics();
    UniformTimeGrid grid = k.grid();
    Map<Column, double[]> columns = new EnumMap<>(Column.class);
    columns.put(Column.SHIN, back(grid, k.shinDeg(), times));
    columns.put(Column.TRUNK_LEAN, back(grid, k.trunkLeanDeg(), times));
    columns.put(Column.THIGH, back(grid, k.thighDeg(), times));
    columns.put(Column.KNEE_FLEXION, back(grid, k.kneeFlexionDeg(), times));
    columns.put(Column.HIP_FLEXION, back(grid, k.hipFlexionDeg(), times));
    double foot = body.scale().footPx();
    columns.put(
        Column.KNEE_PAST_TOE_FOOT, back(grid, k.kneePastToe().map(v -> 100 * v / foot), times));
    Optional<Double> cm = scale.cmPerPx();
    if (cm.isPresent()) {
      double perPx = cm.get();
      double front = perPx / body.scale().frontPlane();
      double floor = (body.toe().y() + body.heel().y()) / 2;
      double stature = body.scale().staturePx() * perPx;
      columns.put(Column.KNEE_PAST_TOE, back(grid, k.kneePastToe().map(v -> v * front), times));
      columns.put(Column.HIP_HEIGHT, back(grid, k.hipY().map(v -> (v - floor) * perPx), times));
      columns.put(
          Column.REAR_KNEE_HEIGHT, back(grid, body.rearKneeHeight().map(v -> v * perPx), times));
      columns.put(
          Column.HEEL_RISE,
          back(grid, body.rise(BodyPoint.FRONT_HEEL, reps).map(v -> v * stature), times));
      columns.put(
          Column.FOREFOOT_RISE,
          back(grid, body.rise(BodyPoint.FRONT_TOE, reps).map(v -> v * stature), times));
    }
    CleanTrack shown = body.track().seenFrom(view);
    double sign = legs.facing().side() == Side.RIGHT ? 1 : -1;
    Map<BodyPoint, double[][]> points = new EnumMap<>(BodyPoint.class);
    for (BodyPoint point : BodyPoint.values()) {
      CleanPath path = shown.path(point);
      points.put(
          point,
          new double[][] {
            back(grid, path.x().map(x -> sign * x), times),
            back(grid, path.y(), times),
            back(grid, path.confidence(), times)
          });
    }
    return new SeriesTable(legs.frames(), times, columns, points);
  }

  private static double[] back(UniformTimeGrid grid, Series series, double[] times) {
    Series at = grid.back(series, times);
    double[] values = new double[times.length];
    for (int i = 0; i < values.length; i++) {
      values[i] = at.seen(i) ? at.value(i) : Double.NaN;
    }
    return values;
  }
}
