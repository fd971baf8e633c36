package shinline.cli.targetfile;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Pattern;
import shinline.cli.words.Words;
import shinline.cli.yaml.Field;

/** What a number in the file counts, with the span beyond which it is surely a slip. */
enum Quantity {
  /** Angles of shin, thigh or trunk. */
  ANGLE(Unit.DEGREES, -90, 90, "12"),
  /** The knee against the toe tip. */
  DISTANCE(Unit.CENTIMETRES, -100, 100, "4.5"),
  /** Heights and travels, which are never negative. */
  HEIGHT(Unit.CENTIMETRES, 0, 150, "12"),
  /** Lengths of a phase. */
  TIME(Unit.SECONDS, 0, 60, "3"),
  ANGLE_MARGIN(Unit.DEGREES, 0, 45, "3"),
  DISTANCE_MARGIN(Unit.CENTIMETRES, 0, 50, "2"),
  TIME_MARGIN(Unit.SECONDS, 0, 30, "0.5");

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,9}(\\.\\d{0,9})?|\\.\\d{1,9})");
  private static final Pattern COMMA = Pattern.compile("[+-]?\\d+,\\d+");

  /** What a coach counts in. */
  private enum Unit {
    DEGREES,
    CENTIMETRES,
    SECONDS
  }

  private final Unit unit;
  private final double least;
  private final double most;
  private final String example;

  Quantity(Unit unit, double least, double most, String example) {
    this.unit = unit;
    this.least = least;
    this.most = most;
    this.example = example;
  }

  String unit() {
    return Words.of(unit, "name");
  }

  /** The number a field holds, or a problem noted at the field. */
  Optional<Double> read(Field field) {
    String advice = Words.say("target-file.number.do", unit(), example);
    Optional<String> word = field.word();
    if (word.isEmpty()) {
      return field.wrong(Words.say("target-file.number.one", unit(), field.shown()), advice);
    }
    if (COMMA.matcher(word.get()).matches()) {
      return field.wrong(
          Words.say("target-file.number.comma", field.shown()),
          Words.say("target-file.number.comma.do", word.get().replace(',', '.')));
    }
    if (!NUMBER.matcher(word.get()).matches()) {
      return field.wrong(Words.say("target-file.number.kind", unit(), field.shown()), advice);
    }
    double value = Double.parseDouble(word.get());
    if (value < 0 && least == 0) {
      return field.wrong(Words.say("target-file.number.negative", field.shown()), advice);
    }
    if (value < least || value > most) {
      return field.wrong(
          Words.say("target-file.number.range", word.get(), unit()),
          Words.say("target-file.number.range.do", plain(least), plain(most), unit()));
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
