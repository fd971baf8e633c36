package shinline.cli.picture;

import java.util.Locale;
import shinline.cli.text.Units;
import shinline.cli.words.Words;
import shinline.metrics.fault.FlagKind;
import shinline.metrics.result.Flag;
import shinline.metrics.result.MeasureUnit;

/**
 * A fault in the words an athlete reads off a picture.
 *
 * @param title what is wrong, with its number: "Heel up 4.7 cm"
 * @param limit what the number stands against: "limit 2.2 cm"
 */
public record FlagCaption(String title, String limit) {

  public static FlagCaption of(Flag flag, Units units) {
    String value = amount(flag.value(), flag.unit(), units);
    String limit = amount(flag.limit(), flag.unit(), units);
    boolean tooMuch = flag.value() > flag.limit();
    return flag.kind() == FlagKind.SHIN_OFF_TARGET && flag.unit() == MeasureUnit.CENTIMETRES
        ? knee(flag, units)
        : new FlagCaption(
            Words.of(flag.kind(), "caption", value),
            Words.of(
                flag.kind(),
                "caption-limit",
                limit,
                value,
                Words.say(tooMuch ? "range.at-most" : "range.at-least", limit)));
  }

  /** A knee's number is a place, not an excess, so the words have to say which way. */
  private static FlagCaption knee(Flag flag, Units units) {
    String place = amount(Math.abs(flag.value()), flag.unit(), units);
    String bound = amount(Math.abs(flag.limit()), flag.unit(), units);
    boolean behind = flag.limit() < 0;
    String range =
        Words.say(
            (flag.value() > flag.limit()) == behind ? "range.at-least" : "range.at-most", bound);
    return new FlagCaption(
        Words.say(flag.value() < 0 ? "caption.knee.behind" : "caption.knee.past", place),
        Words.say(behind ? "caption.knee.limit-behind" : "caption.knee.limit-past", range));
  }

  static String amount(double value, MeasureUnit unit, Units units) {
    return switch (unit) {
      // A limit of 3.5 must not be shown as 4.
      case DEGREES -> few(value) + "°";
      case CENTIMETRES -> length(value, units);
      case PERCENT, PERCENT_OF_FOOT, PERCENT_OF_LEG -> few(value) + " %";
      case SECONDS -> String.format(Locale.ROOT, "%.1f s", value);
      case METRES_PER_SECOND -> String.format(Locale.ROOT, "%.2f m/s", value);
    };
  }

  private static String few(double value) {
    String words = String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.1f" : "%.0f", value);
    return words.endsWith(".0") ? words.substring(0, words.length() - 2) : words;
  }

  static String length(double cm, Units units) {
    return String.format(Locale.ROOT, "%.1f %s", units.fromCm(cm), units.lengthSymbol());
  }
}
