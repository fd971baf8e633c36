package shinline.cli.targetfile;

import java.util.List;
import java.util.Optional;
import shinline.cli.words.Words;
import shinline.cli.yaml.Field;

/**
 * A lower and an upper end read from {@code [min, max]}.
 *
 * @param min negative infinity when open
 * @param max positive infinity when open
 */
record Band(double min, double max) {
  private static final String OPEN = "open";

  /** The band a field holds, or a problem noted at the field. */
  static Optional<Band> read(Field field, Quantity quantity) {
    String advice = Words.say("target-file.band.do", quantity.unit());
    List<Field> ends = field.items();
    if (!field.isList() || ends.size() != 2) {
      return field.wrong(
          field.isList()
              ? Words.say("target-file.band.count", ends.size())
              : Words.say("target-file.band.kind", field.shown()),
          advice);
    }
    Optional<Double> min = end(ends.get(0), quantity, Double.NEGATIVE_INFINITY);
    Optional<Double> max = end(ends.get(1), quantity, Double.POSITIVE_INFINITY);
    if (min.isEmpty() || max.isEmpty()) {
      return Optional.empty();
    }
    Band band = new Band(min.get(), max.get());
    if (Double.isInfinite(band.min) && Double.isInfinite(band.max)) {
      return field.wrong(Words.say("target-file.band.open"), Words.say("target-file.band.open.do"));
    }
    if (band.min > band.max) {
      return field.wrong(
          Words.say("target-file.band.turned"), Words.say("target-file.band.turned.do"));
    }
    if (band.min == band.max) {
      return field.wrong(
          Words.say("target-file.band.point"), Words.say("target-file.band.point.do"));
    }
    return Optional.of(band);
  }

  private static Optional<Double> end(Field field, Quantity quantity, double open) {
    return field.word().filter(OPEN::equals).isPresent() ? Optional.of(open) : quantity.read(field);
  }
}
