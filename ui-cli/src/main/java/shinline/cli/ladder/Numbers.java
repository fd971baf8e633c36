package shinline.cli.ladder;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;
import shinline.cli.words.Words;
import shinline.cli.yaml.Field;
import shinline.metrics.load.Mass;
import shinline.metrics.load.MassUnit;

/** Numbers of a ladder file, as decimals. */
final class Numbers {
  private static final Pattern NUMBER = Pattern.compile("\\d{1,6}(\\.\\d{1,6})?");
  private static final Pattern WHOLE = Pattern.compile("\\d{1,6}");
  private static final Pattern COMMA = Pattern.compile("\\d+,\\d+");
  private static final BigDecimal MOST_MASS = BigDecimal.valueOf(1000);
  private static final BigDecimal MOST_PCT = BigDecimal.valueOf(500);

  private Numbers() {}

  /** A share in per cent, above 0. */
  static Optional<BigDecimal> percent(Field field) {
    return above0(field, MOST_PCT);
  }

  /** A mass above 0. */
  static Optional<Mass> mass(Field field, MassUnit unit) {
    return above0(field, MOST_MASS).map(v -> new Mass(v, unit));
  }

  /** A whole number of that span. */
  static OptionalInt whole(Field field, int least, int most) {
    Optional<String> word = field.word().filter(w -> WHOLE.matcher(w).matches());
    Optional<Integer> found = word.map(Integer::valueOf).filter(n -> n >= least && n <= most);
    if (found.isEmpty()) {
      field.wrong(
          Words.say("ladder-file.whole", field.shown()),
          Words.say("ladder-file.whole.do", least, most));
      return OptionalInt.empty();
    }
    return OptionalInt.of(found.get());
  }

  private static Optional<BigDecimal> above0(Field field, BigDecimal most) {
    Optional<String> word = field.word();
    if (word.filter(w -> COMMA.matcher(w).matches()).isPresent()) {
      return field.wrong(
          Words.say("target-file.number.comma", field.shown()),
          Words.say("target-file.number.comma.do", word.get().replace(',', '.')));
    }
    Optional<BigDecimal> found =
        word.filter(w -> NUMBER.matcher(w).matches())
            .map(BigDecimal::new)
            .filter(v -> v.signum() > 0 && v.compareTo(most) <= 0);
    return found.isPresent()
        ? found
        : field.wrong(
            Words.say("ladder-file.number", field.shown()),
            Words.say("ladder-file.number.do", most.toPlainString()));
  }
}
