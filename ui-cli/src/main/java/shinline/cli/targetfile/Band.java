package shinline.cli.targetfile;

import java.util.List;
import java.util.Optional;

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
    String advice =
        "write [least, most] in "
            + quantity.unit()
            + ", with the word open for an end without limit";
    List<Field> ends = field.items();
    if (!field.isList() || ends.size() != 2) {
      return field.wrong(
          field.isList()
              ? "should hold two values, not " + ends.size()
              : "should be [least, most], not " + field.shown(),
          advice);
    }
    Optional<Double> min = end(ends.get(0), quantity, Double.NEGATIVE_INFINITY);
    Optional<Double> max = end(ends.get(1), quantity, Double.POSITIVE_INFINITY);
    if (min.isEmpty() || max.isEmpty()) {
      return Optional.empty();
    }
    Band band = new Band(min.get(), max.get());
    if (Double.isInfinite(band.min) && Double.isInfinite(band.max)) {
      return field.wrong("is open at both ends, so it asks for nothing", "give one end a number");
    }
    if (band.min > band.max) {
      return field.wrong("has its ends the wrong way round", "write the smaller number first");
    }
    if (band.min == band.max) {
      return field.wrong(
          "has the same number at both ends, which no rep can meet", "leave room between them");
    }
    return Optional.of(band);
  }

  private static Optional<Double> end(Field field, Quantity quantity, double open) {
    return field.word().filter(OPEN::equals).isPresent() ? Optional.of(open) : quantity.read(field);
  }
}
