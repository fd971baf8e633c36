package shinline.cli.report;

import java.util.Locale;
import java.util.OptionalDouble;
import shinline.cli.text.Units;
import shinline.cli.words.Words;
import shinline.metrics.result.MeasureUnit;
import shinline.metrics.result.Reading;

/**
 * Numbers on the page. Lengths are written twice, in centimetres and in inches, and the style sheet
 * shows one of them: the switch then works without a script.
 */
public final class Figure {
  /** Classes of what is shown in one unit only. */
  static final String CM = "cm";

  static final String INCH = "in";

  private Figure() {}

  /** A value with its unit, for running text. */
  public static void quantity(Markup page, double value, MeasureUnit unit) {
    if (unit == MeasureUnit.CENTIMETRES) {
      page.leaf("span", number(value, 1) + "\u00a0cm", "class", CM);
      page.leaf("span", number(Units.IMPERIAL.fromCm(value), 1) + "\u00a0in", "class", INCH);
    } else {
      page.text(number(value, places(unit)) + symbol(unit));
    }
  }

  /** A reading with its ± and without its unit, for a table whose heading names the unit. */
  static void reading(Markup page, Reading.Measured reading, MeasureUnit unit) {
    if (unit == MeasureUnit.CENTIMETRES) {
      withPlusMinus(page, CM, reading.value(), reading.plusMinus(), 1);
      withPlusMinus(
          page,
          INCH,
          Units.IMPERIAL.fromCm(reading.value()),
          Units.IMPERIAL.fromCm(reading.plusMinus()),
          1);
    } else {
      withPlusMinus(page, "", reading.value(), reading.plusMinus(), places(unit));
    }
  }

  private static void withPlusMinus(
      Markup page, String shownIn, double value, double plusMinus, int places) {
    page.open("span", "class", ("reading " + shownIn).strip());
    page.leaf("b", number(value, places));
    page.leaf("small", " ±" + number(plusMinus, places));
    page.close();
  }

  /** A unit in a heading. */
  public static void unit(Markup page, MeasureUnit unit) {
    if (unit == MeasureUnit.CENTIMETRES) {
      page.leaf("span", "cm", "class", CM).leaf("span", "in", "class", INCH);
    } else {
      page.text(
          switch (unit) {
            case DEGREES -> Words.say("report.unit.degrees");
            case SECONDS -> "s";
            default -> Words.of(unit, "symbol");
          });
    }
  }

  /**
   * A column's heading again, in a cell: a narrow screen shows each row as a card. A screen reader
   * has it from the table.
   */
  static void label(Markup page, String name, MeasureUnit unit) {
    page.open("span", "class", "label", "aria-hidden", "true").text(name + " ").open("small");
    unit(page, unit);
    page.close().close();
  }

  public static String symbol(MeasureUnit unit) {
    return switch (unit) {
      case DEGREES -> "°";
      default -> "\u00a0" + Words.of(unit, "symbol");
    };
  }

  private static int places(MeasureUnit unit) {
    return switch (unit) {
      case SECONDS, METRES_PER_SECOND -> 2;
      case PERCENT, PERCENT_OF_FOOT, PERCENT_OF_LEG -> 0;
      case DEGREES, CENTIMETRES -> 1;
    };
  }

  /** Rounded, with a true minus sign and without a negative zero. */
  public static String number(double value, int places) {
    String plain = plain(value, places);
    return plain.startsWith("-") ? "−" + plain.substring(1) : plain;
  }

  /** As {@link #number} with an ASCII minus, for attributes that a browser reads. */
  public static String plain(double value, int places) {
    String plain = String.format(Locale.ROOT, "%." + places + "f", value);
    return plain.startsWith("-") && plain.chars().noneMatch(c -> c >= '1' && c <= '9')
        ? plain.substring(1)
        : plain;
  }

  /** A value for an attribute; empty where nothing was seen. */
  public static String plain(OptionalDouble value, int places) {
    return value.isPresent() ? plain(value.getAsDouble(), places) : "";
  }

  /** The head of a rep's row in a table. */
  static void rowHeading(Markup page, int rep) {
    page.leaf(
        "th",
        Integer.toString(rep),
        "scope",
        "row",
        "role",
        "rowheader",
        "data-heading",
        Words.say("table.rep"));
  }
}
