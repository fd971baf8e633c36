package shinline.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.SeriesTable;
import shinline.metrics.target.ShinTarget;
import shinline.metrics.target.Target;

/**
 * What one plot shows.
 *
 * @param meaning what up means, for those who do not know the measure
 * @param band the asked-for range at the bottom, in {@code unit}
 */
record Curve(
    String name, String meaning, SeriesTable.Column column, MeasureUnit unit, Optional<Band> band) {

  /** Ends may be infinite. */
  record Band(double min, double max) {}

  /** The curves that were seen at least once, in the order of reading. */
  static List<Curve> of(SeriesTable series, Target target) {
    boolean scale = seen(series, SeriesTable.Column.KNEE_PAST_TOE);
    Optional<Band> trunk = target.trunk().map(t -> new Band(t.minDeg(), t.maxDeg()));
    List<Curve> curves = new ArrayList<>();
    curves.add(
        new Curve(
            "Shin",
            "0 is upright, up is knee forward",
            SeriesTable.Column.SHIN,
            MeasureUnit.DEGREES,
            target.shin().flatMap(Curve::angle)));
    curves.add(
        scale
            ? new Curve(
                "Knee past toe",
                "0 is above the toe tip, up is ahead of it",
                SeriesTable.Column.KNEE_PAST_TOE,
                MeasureUnit.CENTIMETRES,
                target.shin().flatMap(Curve::distance))
            : new Curve(
                "Knee past toe",
                "0 is above the toe tip, up is ahead of it",
                SeriesTable.Column.KNEE_PAST_TOE_FOOT,
                MeasureUnit.PERCENT_OF_FOOT,
                Optional.empty()));
    curves.add(
        new Curve(
            "Trunk",
            "0 is upright, up is leaning forward",
            SeriesTable.Column.TRUNK_LEAN,
            MeasureUnit.DEGREES,
            trunk));
    curves.add(
        new Curve(
            "Hip height",
            "down is deeper",
            SeriesTable.Column.HIP_HEIGHT,
            MeasureUnit.CENTIMETRES,
            Optional.empty()));
    return curves.stream().filter(c -> seen(series, c.column())).toList();
  }

  OptionalDouble at(SeriesTable series, int row) {
    return series.value(column, row);
  }

  private static boolean seen(SeriesTable series, SeriesTable.Column column) {
    for (int row = 0; row < series.rows(); row++) {
      if (series.value(column, row).isPresent()) {
        return true;
      }
    }
    return false;
  }

  private static Optional<Band> angle(ShinTarget shin) {
    return shin.fold(
        a -> Optional.of(new Band(a.minDeg(), a.maxDeg())), distance -> Optional.empty());
  }

  private static Optional<Band> distance(ShinTarget shin) {
    return shin.fold(angle -> Optional.empty(), d -> Optional.of(new Band(d.minCm(), d.maxCm())));
  }
}
