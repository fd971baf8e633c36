package shinline.cli.text;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shinline.cli.words.Words;

/**
 * A length as a coach types it: {@code 178cm}, {@code 1.78m}, {@code 5ft10in}, {@code 5'10"},
 * {@code 70in}. A number without a unit is refused: 70 may be inches or centimetres, and a wrong
 * guess would scale every centimetre of the report.
 *
 * @param metres above 0
 */
public record Length(double metres) {
  private static final double METRES_PER_INCH = 0.0254;
  private static final String NUMBER = "(\\d{1,4}(?:[.,]\\d{1,4})?)";
  private static final Pattern METRIC = Pattern.compile(NUMBER + "\\s*(mm|cm|m)");
  private static final Pattern FEET =
      Pattern.compile("(\\d{1,2})\\s*(?:ft|')\\s*(?:" + NUMBER + "\\s*(?:in|\"|''|)?)?");
  private static final Pattern INCHES = Pattern.compile(NUMBER + "\\s*(?:in|\"|'')");

  /** Empty when the text is no length with a unit. */
  public static Optional<Length> parse(String text) {
    String typed = text.strip().toLowerCase(Locale.ROOT).replace('’', '\'').replace('”', '"');
    Matcher metric = METRIC.matcher(typed);
    if (metric.matches()) {
      double unit =
          switch (metric.group(2)) {
            case "mm" -> 0.001;
            case "cm" -> 0.01;
            default -> 1;
          };
      return positive(number(metric.group(1)) * unit);
    }
    Matcher feet = FEET.matcher(typed);
    if (feet.matches()) {
      double inches = feet.group(2) == null ? 0 : number(feet.group(2));
      return inches < 12
          ? positive((12 * Integer.parseInt(feet.group(1)) + inches) * METRES_PER_INCH)
          : Optional.empty();
    }
    Matcher inches = INCHES.matcher(typed);
    return inches.matches()
        ? positive(number(inches.group(1)) * METRES_PER_INCH)
        : Optional.empty();
  }

  private static Optional<Length> positive(double metres) {
    return metres > 0 ? Optional.of(new Length(metres)) : Optional.empty();
  }

  private static double number(String digits) {
    return Double.parseDouble(digits.replace(',', '.'));
  }

  /** In centimetres and inches, for messages. */
  @Override
  public String toString() {
    return Words.say("check.length", metres * 100, metres / METRES_PER_INCH);
  }
}
