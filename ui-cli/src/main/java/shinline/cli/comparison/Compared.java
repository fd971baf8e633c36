package shinline.cli.comparison;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import shinline.cli.format.ResultRep;
import shinline.cli.words.Words;
import shinline.metrics.result.Reading;

/** What can be compared: where it stands in a result, the word for it, and its unit. */
enum Compared {
  SHIN("shin", ResultRep::atBottom, "shinDeg", Dimension.ANGLE),
  KNEE_PAST_TOE("knee-past-toe", ResultRep::atBottom, "kneePastToeCm", Dimension.LENGTH),
  TRUNK("trunk", ResultRep::atBottom, "trunkLeanDeg", Dimension.ANGLE),
  THIGH("thigh", ResultRep::atBottom, "thighDeg", Dimension.ANGLE),
  KNEE("knee", ResultRep::atBottom, "kneeFlexionDeg", Dimension.ANGLE),
  HIP("hip", ResultRep::atBottom, "hipFlexionDeg", Dimension.ANGLE),
  REAR_KNEE("rear-knee", ResultRep::atBottom, "rearKneeHeightCm", Dimension.LENGTH),
  HIP_TRAVEL("hip-travel", ResultRep::atBottom, "hipTravelCm", Dimension.LENGTH),
  LOWERING("lowering", ResultRep::tempo, "loweringS", Dimension.TIME),
  HOLD("hold", ResultRep::tempo, "holdS", Dimension.TIME),
  DRIVE("drive", ResultRep::tempo, "driveS", Dimension.TIME),
  DRIVE_SPEED("drive-speed", ResultRep::drive, "meanSpeedMps", Dimension.SPEED);

  /** What a value is, and the units it may be given in, the result's own first. */
  enum Dimension {
    ANGLE(1),
    LENGTH(1),
    TIME(2),
    SPEED(2);

    private final int places;

    Dimension(int places) {
      this.places = places;
    }

    int places() {
      return places;
    }

    /** How many of the result's own units one of a unit is; empty for a unit of something else. */
    Optional<Double> factor(String unit) {
      return switch (this) {
        case ANGLE -> unit.equals("deg") || unit.equals("°") ? Optional.of(1.0) : Optional.empty();
        case LENGTH ->
            switch (unit) {
              case "cm" -> Optional.of(1.0);
              case "mm" -> Optional.of(0.1);
              case "in" -> Optional.of(2.54);
              default -> Optional.empty();
            };
        case TIME -> unit.equals("s") ? Optional.of(1.0) : Optional.empty();
        case SPEED -> unit.equals("m/s") ? Optional.of(1.0) : Optional.empty();
      };
    }
  }

  /** An object of a rep, with the readings it holds. */
  interface Part extends Function<ResultRep, Map<String, Optional<Reading.Measured>>> {}

  private final String word;
  private final Part part;
  private final String key;
  private final Dimension dimension;

  Compared(String word, Part part, String key, Dimension dimension) {
    this.word = word;
    this.part = part;
    this.key = key;
    this.dimension = dimension;
  }

  static Optional<Compared> of(String word) {
    return Arrays.stream(values()).filter(c -> c.word.equals(word)).findFirst();
  }

  String word() {
    return word;
  }

  /** The object of a rep that holds it. */
  Part part() {
    return part;
  }

  String key() {
    return key;
  }

  Dimension dimension() {
    return dimension;
  }

  /** A value in words, with its unit. */
  String words(double value) {
    return Words.say(
        "compare.unit." + dimension.name().toLowerCase(java.util.Locale.ROOT), number(value));
  }

  String number(double value) {
    return String.format(java.util.Locale.ROOT, "%." + dimension.places() + "f", value);
  }
}
