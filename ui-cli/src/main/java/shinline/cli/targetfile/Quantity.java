package shinline.cli.targetfile;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;

/** What a number in the file counts, with the span beyond which it is surely a slip. */
enum Quantity {
  /** Angles of shin, thigh or trunk. */
  ANGLE("degrees", -90, 90, "12"),
  /** The knee against the toe tip. */
  DISTANCE("centimetres", -100, 100, "4.5"),
  /** Heights and travels, which are never negative. */
  HEIGHT("centimetres", 0, 150, "12"),
  /** Lengths of a phase. */
  TIME("seconds", 0, 60, "3"),
  ANGLE_MARGIN("degrees", 0, 45, "3"),
  DISTANCE_MARGIN("centimetres", 0, 50, "2"),
  TIME_MARGIN("seconds", 0, 30, "0.5");

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,9}(\\.\\d{0,9})?|\\.\\d{1,9})");
  private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+");

  private final String unit;
  private final double least;
  private final double most;
  private final String example;

  Quantity(String unit, double least, double most, String example) {
    this.unit = unit;
    this.least = least;
    this.most = most;
    this.example = example;
  }

  String unit() {
    return unit;
  }

  /** The number a field holds, or a problem noted at the field. */
  Optional<Double> read(Field field) {
    String advice = "write a number of " + unit + ", for example " + example;
    Optional<String> word = field.word();
    if (word.isEmpty()) {
      return field.wrong("should be one number of " + unit + ", not " + field.shown(), advice);
    }
    if (COMMA.matcher(word.get()).matches()) {
      return field.wrong(
          field.shown() + " has a decimal comma", "write " + word.get().replace(',', '.'));
    }
    if (!NUMBER.matcher(word.get()).matches()) {
      return field.wrong("should be a number of " + unit + ", not " + field.shown(), advice);
    }
    double value = Double.parseDouble(word.get());
    if (value < 0 && least == 0) {
      return field.wrong("must not be negative, but is " + field.shown(), advice);
    }
    if (value < least || value > most) {
      return field.wrong(
          word.get() + " " + unit + " cannot be meant",
          "give " + plain(least) + " to " + plain(most) + " " + unit);
    }
    return Optional.of(value);
  }

  /** The number a text holds, if it is one that could be meant. */
  Optional<Double> plausible(String text) {
    return NUMBER.matcher(text).matches()
        ? Optional.of(Double.parseDouble(text)).filter(v -> v >= least && v <= most)
        : Optional.empty();
  }

  private static String plain(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
