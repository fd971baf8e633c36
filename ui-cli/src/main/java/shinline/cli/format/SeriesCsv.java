package shinline.cli.format;

import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import shinline.cli.crossing.PictureAxis;
import shinline.cli.csv.CsvTable;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.result.SeriesTable.Column;
import shinline.metrics.track.BodyPoint;
import shinline.vision.scene.CameraPath;

/**
 * Writes the frame-by-frame table of docs/result-format.md: fixed decimals, an empty cell where
 * nothing was seen. Image coordinates have y down, as a picture program shows them.
 */
public final class SeriesCsv {
  private static final int TIME_PLACES = 5;
  private static final int VALUE_PLACES = 3;
  private static final int PIXEL_PLACES = 2;

  /** The order of the contract; columns may be added at the end only. */
  private static final List<Column> COLUMNS =
      List.of(
          Column.SHIN,
          Column.TRUNK_LEAN,
          Column.THIGH,
          Column.KNEE_FLEXION,
          Column.KNEE_PAST_TOE,
          Column.HIP_HEIGHT,
          Column.HIP_FLEXION,
          Column.KNEE_PAST_TOE_FOOT,
          Column.REAR_KNEE_HEIGHT,
          Column.HEEL_RISE,
          Column.FOREFOOT_RISE);

  private SeriesCsv() {}

  /**
   * @param heightPx height of the upright picture, which turns y up into y down
   * @param camera leads from the view measured in to the frame of each row
   */
  public static void write(SeriesTable series, int heightPx, CameraPath camera, Writer out)
      throws IOException {
    PictureAxis axis = new PictureAxis(heightPx);
    CsvTable.write(
        Stream.concat(
            Stream.of(names()),
            IntStream.range(0, series.rows()).mapToObj(row -> cells(series, row, axis, camera))),
        out);
  }

  private static List<String> cells(
      SeriesTable series, int row, PictureAxis axis, CameraPath camera) {
    List<String> cells = new ArrayList<>();
    cells.add(Decimals.fixed(series.timeS(row), TIME_PLACES));
    for (Column column : COLUMNS) {
      cells.add(cell(series.value(column, row), VALUE_PLACES));
    }
    cells.add(Integer.toString(series.frame(row)));
    for (BodyPoint point : BodyPoint.values()) {
      OptionalDouble x = series.x(point, row);
      OptionalDouble up = series.y(point, row);
      if (x.isPresent() && up.isPresent()) {
        Point2D at =
            camera.inFrame(series.timeS(row), x.getAsDouble(), axis.rowOf(up.getAsDouble()));
        cells.add(Decimals.fixed(at.getX(), PIXEL_PLACES));
        cells.add(Decimals.fixed(at.getY(), PIXEL_PLACES));
      } else {
        cells.add("");
        cells.add("");
      }
      cells.add(cell(series.confidence(point, row), VALUE_PLACES));
    }
    return cells;
  }

  /** What such a file begins with. */
  public static String headings() {
    return String.join(",", names());
  }

  /** The heading alone: what a clip without a measured set has. */
  public static void header(Writer out) throws IOException {
    CsvTable.write(Stream.of(names()), out);
  }

  /** Every column's name, in order. */
  static List<String> names() {
    List<String> names = new ArrayList<>(List.of("timeS"));
    COLUMNS.forEach(c -> names.add(c.jsonName()));
    names.add("frame");
    for (BodyPoint point : BodyPoint.values()) {
      names.add(camel(point) + "X");
      names.add(camel(point) + "Y");
      names.add(camel(point) + "Confidence");
    }
    return names;
  }

  private static String camel(BodyPoint point) {
    StringBuilder name = new StringBuilder();
    for (String word : point.name().toLowerCase(Locale.ROOT).split("_", -1)) {
      name.append(
          name.isEmpty()
              ? word
              : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1));
    }
    return name.toString();
  }

  private static String cell(OptionalDouble value, int places) {
    return value.isPresent() ? Decimals.fixed(value.getAsDouble(), places) : "";
  }
}
