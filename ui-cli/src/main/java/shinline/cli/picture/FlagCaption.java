package shinline.cli.picture;

import java.util.Locale;
import shinline.cli.text.Units;
import shinline.metrics.result.Flag;
import shinline.metrics.result.FlagKind;
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
    return switch (flag.kind()) {
      case LEAN_GROWS -> new FlagCaption("Leans " + value + " more", "limit " + limit);
      case HIPS_FIRST -> new FlagCaption("Hips rise first: tips " + value, "limit " + limit);
      case BACK_ROUNDS -> new FlagCaption("Back may round: look here", value + ", limit " + limit);
      case BACK_ARCHES ->
          new FlagCaption("Back may over-arch: look here", value + ", limit " + limit);
      case HINGE_SHIFT -> new FlagCaption("Turns into a hinge: " + value, "limit " + limit);
      case HEEL_RISE -> new FlagCaption("Heel up " + value, "limit " + limit);
      case FOREFOOT_RISE -> new FlagCaption("Forefoot up " + value, "limit " + limit);
      case REAR_PUSH -> new FlagCaption("Rear foot pushes: " + value, "limit " + limit);
      case SHALLOW -> new FlagCaption("Shallow: " + value + " of full depth", "at least " + limit);
      case LOWERING_RUSHED -> new FlagCaption("Lowered in " + value, "at least " + limit);
      case HOLD_SKIPPED -> new FlagCaption("Held for " + value, "at least " + limit);
      case DRIVE_SLOW ->
          new FlagCaption("Drive slow: " + value + " of the best", "at least " + limit);
      case WOBBLE -> new FlagCaption("Wobbles " + value, "limit " + limit);
      case SHIN_OFF_TARGET -> shin(flag, value, limit, units);
    };
  }

  /** A shin's number is a place, not an excess, so the words have to say which way. */
  private static FlagCaption shin(Flag flag, String value, String limit, Units units) {
    String bound = flag.value() > flag.limit() ? "at most " : "at least ";
    if (flag.unit() != MeasureUnit.CENTIMETRES) {
      return new FlagCaption("Shin off target: " + value, bound + limit);
    }
    String place =
        amount(Math.abs(flag.value()), flag.unit(), units)
            + (flag.value() < 0 ? " behind the toe" : " past the toe");
    return new FlagCaption(
        "Knee " + place,
        flag.limit() < 0
            ? (bound.equals("at least ") ? "at most " : "at least ")
                + amount(-flag.limit(), flag.unit(), units)
                + " behind it"
            : bound + limit + " past it");
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

  /** Whether the fault is one of timing, which no line in a still picture can show. */
  static boolean ofTiming(FlagKind kind) {
    return kind == FlagKind.LOWERING_RUSHED
        || kind == FlagKind.HOLD_SKIPPED
        || kind == FlagKind.DRIVE_SLOW;
  }
}
