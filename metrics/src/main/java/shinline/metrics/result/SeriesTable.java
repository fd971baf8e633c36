package shinline.metrics.result;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.OptionalDouble;
import shinline.metrics.track.BodyPoint;

/** Kinematics frame by frame: one row for each frame that was looked at. */
public final class SeriesTable {

  /** A column of kinematics; names as in the result format. */
  public enum Column {
    SHIN("shinDeg"),
    TRUNK_LEAN("trunkLeanDeg"),
    THIGH("thighDeg"),
    KNEE_FLEXION("kneeFlexionDeg"),
    HIP_FLEXION("hipFlexionDeg"),
    KNEE_PAST_TOE("kneePastToeCm"),
    KNEE_PAST_TOE_FOOT("kneePastToeFootPct"),
    HIP_HEIGHT("hipHeightCm"),
    REAR_KNEE_HEIGHT("rearKneeHeightCm"),
    HEEL_RISE("heelRiseCm"),
    FOREFOOT_RISE("forefootRiseCm");

    private final String jsonName;

    Column(String jsonName) {
      this.jsonName = jsonName;
    }

    public String jsonName() {
      return jsonName;
    }
  }

  private final int[] frame;
  private final double[] timeS;
  private final Map<Column, double[]> columns;
  private final Map<BodyPoint, double[][]> points;

  /**
   * @param frame frame index of each row
   * @param timeS seconds of each row
   * @param columns values of each row, NaN inside where not seen (never handed out)
   * @param points x, y (pixels, y up), confidence of each row: three arrays a point
   */
  public SeriesTable(
      int[] frame,
      double[] timeS,
      Map<Column, double[]> columns,
      Map<BodyPoint, double[][]> points) {
    this.frame = frame.clone();
    this.timeS = timeS.clone();
    this.columns = new EnumMap<>(Column.class);
    columns.forEach((k, v) -> this.columns.put(k, checked(v)));
    this.points = new EnumMap<>(BodyPoint.class);
    points.forEach(
        (k, v) -> this.points.put(k, Arrays.stream(v).map(this::checked).toArray(double[][]::new)));
  }

  private double[] checked(double[] values) {
    if (values.length != timeS.length) {
      throw new IllegalArgumentException(values.length + " values for " + timeS.length + " rows");
    }
    return values.clone();
  }

  public int rows() {
    return timeS.length;
  }

  public int frame(int row) {
    return frame[row];
  }

  public double timeS(int row) {
    return timeS[row];
  }

  /** First row at or after a time (seconds); the number of rows when there is none. */
  public int firstRowNotBefore(double atS) {
    int found = Arrays.binarySearch(timeS, atS);
    return found >= 0 ? found : -found - 1;
  }

  /** Value in the unit its name ends with; empty when not seen or not measurable. */
  public OptionalDouble value(Column column, int row) {
    double[] values = columns.get(column);
    return values == null ? OptionalDouble.empty() : seen(values[row]);
  }

  /** Pixels from the left edge of the upright picture. */
  public OptionalDouble x(BodyPoint point, int row) {
    return coordinate(point, 0, row);
  }

  /** Pixels above the bottom edge of the upright picture. */
  public OptionalDouble y(BodyPoint point, int row) {
    return coordinate(point, 1, row);
  }

  /** The model's own confidence 0…1. */
  public OptionalDouble confidence(BodyPoint point, int row) {
    return coordinate(point, 2, row);
  }

  private OptionalDouble coordinate(BodyPoint point, int axis, int row) {
    double[][] xyc = points.get(point);
    return xyc == null ? OptionalDouble.empty() : seen(xyc[axis][row]);
  }

  private static OptionalDouble seen(double value) {
    return Double.isNaN(value) ? OptionalDouble.empty() : OptionalDouble.of(value);
  }
}
