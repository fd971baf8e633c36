package shinline.cli.report;

import java.util.function.Function;
import shinline.cli.words.Words;
import shinline.metrics.result.BarReading;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;

/** What is told of the bar in each drive, in the order of reading. */
enum BarColumn {
  MEAN_SPEED(MeasureUnit.METRES_PER_SECOND, BarReading::meanSpeed),
  PEAK_SPEED(MeasureUnit.METRES_PER_SECOND, BarReading::peakSpeed),
  SPEED_LOSS(MeasureUnit.PERCENT, BarReading::speedLossPct),
  STRAY(MeasureUnit.CENTIMETRES, BarReading::strayCm);

  private final MeasureUnit unit;
  private final Function<BarReading, Reading> reading;

  BarColumn(MeasureUnit unit, Function<BarReading, Reading> reading) {
    this.unit = unit;
    this.reading = reading;
  }

  MeasureUnit unit() {
    return unit;
  }

  /** For a heading. */
  String heading() {
    return Words.of(this, "column");
  }

  Reading of(BarReading bar) {
    return reading.apply(bar);
  }
}
