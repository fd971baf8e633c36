package shinline.cli.accuracy;

import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;

/**
 * How far a true value has to be from a limit for its verdict to count: nearer, two careful people
 * with a goniometer, a tape and a stopwatch would not agree either.
 */
record Clearance(double deg, double cm, double s) {
  static final Clearance ASKED = new Clearance(2, 2, 0.15);

  /** A true value as the judge reads it: too close to call when a limit lies within. */
  Reading around(double value, MeasureUnit unit) {
    return Reading.of(
        value,
        switch (unit) {
          case DEGREES -> deg;
          case CENTIMETRES -> cm;
          case SECONDS -> s;
          default -> throw new IllegalArgumentException("no clearance in " + unit);
        });
  }
}
