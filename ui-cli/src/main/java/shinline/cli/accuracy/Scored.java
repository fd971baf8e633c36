package shinline.cli.accuracy;

import java.util.Locale;
import java.util.Optional;
import shinline.cli.words.Words;
import shinline.metrics.result.BarReading;
import shinline.metrics.result.Gap;
import shinline.metrics.result.Measure;
import shinline.metrics.result.Reading;
import shinline.metrics.result.RepResult;

/**
 * What is held against the truth, and how good it should be: the bands to be judged are about 10°
 * and 5 cm wide, so the mean absolute error is to stay below a fifth of that, or less where the
 * measure allows.
 */
enum Scored {
  SHIN("°", Measure.SHIN, 1.0),
  TRUNK_LEAN("°", Measure.TRUNK_LEAN, 1.5),
  THIGH("°", Measure.THIGH, 1.5),
  KNEE_FLEXION("°", Measure.KNEE_FLEXION, 2.0),
  KNEE_PAST_TOE("cm", Measure.KNEE_PAST_TOE, 1.0),
  REAR_KNEE_HEIGHT("cm", Measure.REAR_KNEE_HEIGHT, null),
  LOWERING("s", null, 0.06),
  HOLD("s", null, 0.06),
  DRIVE("s", null, 0.06),
  DRIVE_SPEED("%", null, 5.0),
  BAR_SPEED("%", null, 6.0);

  private final String unit;
  private final @org.jspecify.annotations.Nullable Measure measure;
  private final @org.jspecify.annotations.Nullable Double goal;

  Scored(
      String unit,
      @org.jspecify.annotations.Nullable Measure measure,
      @org.jspecify.annotations.Nullable Double goal) {

    this.unit = unit;
    this.measure = measure;
    this.goal = goal;
  }

  String words() {
    return Words.of(this, "name");
  }

  String unit() {
    return unit;
  }

  /** Places after the point that a reader can use. */
  int places() {
    return unit.equals("s") ? 3 : 2;
  }

  /** A size of it, with as many places as a reader can use. */
  String told(double value) {
    return String.format(Locale.ROOT, "%." + places() + "f", value);
  }

  /** What is read at the bottom; empty for a phase or a speed. */
  Optional<Measure> measure() {
    return Optional.ofNullable(measure);
  }

  /** Name of the column in the truth's series; empty for a phase or a speed. */
  Optional<String> column() {
    return Optional.ofNullable(measure).map(Measure::jsonName);
  }

  /** Mean absolute error to stay below; empty when none is set. */
  Optional<Double> goal() {
    return Optional.ofNullable(goal);
  }

  /** What an error is multiplied by for its unit: speeds are held against the true speed. */
  double per(double truth) {
    return unit.equals("%") ? 100 / truth : 1;
  }

  Reading in(RepResult rep) {
    if (measure != null) {
      return rep.at(measure);
    }
    return switch (this) {
      case LOWERING -> rep.tempo().lowering();
      case HOLD -> rep.tempo().hold();
      case DRIVE_SPEED -> rep.drive().meanSpeed();
      case BAR_SPEED ->
          rep.drive()
              .bar()
              .map(BarReading::meanSpeed)
              .orElseGet(() -> Reading.missing(Gap.BAR_NOT_SEEN));
      default -> rep.tempo().drive();
    };
  }
}
