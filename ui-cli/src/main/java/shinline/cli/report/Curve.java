package shinline.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.cli.words.Words;
import shinline.metrics.result.Aspect;
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
            Words.of(Aspect.SHIN, "column"),
            Words.say("report.curve.shin.meaning"),
            SeriesTable.Column.SHIN,
            MeasureUnit.DEGREES,
            target.shin().flatMap(Curve::angle)));
    curves.add(
        scale
            ? new Curve(
                Words.of(Aspect.KNEE, "column"),
                Words.say("report.curve.knee.meaning"),
                SeriesTable.Column.KNEE_PAST_TOE,
                MeasureUnit.CENTIMETRES,
                target.shin().flatMap(Curve::distance))
            : new Curve(
                Words.of(Aspect.KNEE, "column"),
                Words.say("report.curve.knee.meaning"),
                SeriesTable.Column.KNEE_PAST_TOE_FOOT,
                MeasureUnit.PERCENT_OF_FOOT,
                Optional.empty()));
    curves.add(
        new Curve(
            Words.of(Aspect.TRUNK, "column"),
            Words.say("report.curve.trunk.meaning"),
            SeriesTable.Column.TRUNK_LEAN,
            MeasureUnit.DEGREES,
            trunk));
    curves.add(
        new Curve(
            Words.say("report.curve.hip"),
            Words.say("report.curve.hip.meaning"),
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
