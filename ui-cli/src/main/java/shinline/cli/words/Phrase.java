package shinline.cli.words;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A text with numbered places for arguments. {@code {0}} takes a text or a whole number; {@code
 * {0%.1f}} a number in a format of {@link java.util.Formatter}, with a decimal point everywhere;
 * {@code {0|rep|reps}} gives the first form for 1, else the second. Everything else, quotes too,
 * stands for itself. {@code {{} and {@code }}} are braces; any other brace is an error.
 */
final class Phrase {
  private static final Pattern PLACE =
      Pattern.compile("\\{(\\d)(?:(%[^{}|]*)|\\|([^{}|]*)\\|([^{}|]*))?}");

  private final String key;
  private final List<Piece> pieces;
  private final int places;
  private final boolean whole;

  private Phrase(String key, List<Piece> pieces, TreeSet<Integer> numbers) {
    this.key = key;
    this.pieces = List.copyOf(pieces);
    places = numbers.isEmpty() ? 0 : numbers.last() + 1;
    whole = numbers.size() == places;
  }

  /**
   * @param key for messages
   * @throws IllegalArgumentException if braces do not match
   */
  static Phrase parse(String key, String text) {
    List<Piece> pieces = new ArrayList<>();
    TreeSet<Integer> numbers = new TreeSet<>();
    Matcher place = PLACE.matcher(text);
    int from = 0;
    while (place.find()) {
      pieces.add(literal(key, text.substring(from, place.start())));
      numbers.add(Integer.parseInt(place.group(1)));
      pieces.add(piece(key, place));
      from = place.end();
    }
    pieces.add(literal(key, text.substring(from)));
    return new Phrase(key, pieces, numbers);
  }

  /** How many arguments it takes, up to the one with the highest number. */
  int places() {
    return places;
  }

  /** Whether it uses each of them. */
  boolean usesAll() {
    return whole;
  }

  /**
   * With every argument in its place.
   *
   * @throws IllegalArgumentException if there are more or fewer arguments than places, one has no
   *     place, or one is of the wrong kind
   */
  String fill(Object... arguments) {
    if (arguments.length != places || !whole) {
      throw new IllegalArgumentException(
          key + ": takes " + places + " arguments, all of them, given " + arguments.length);
    }
    return fillFrom(arguments);
  }

  /**
   * With those arguments that have a place.
   *
   * @throws IllegalArgumentException if there are too few, or one is of the wrong kind
   */
  String fillFrom(Object... arguments) {
    if (arguments.length < places) {
      throw new IllegalArgumentException(
          key + ": takes " + places + " arguments, given " + arguments.length);
    }
    StringBuilder text = new StringBuilder();
    pieces.forEach(piece -> text.append(piece.with(arguments)));
    return text.toString();
  }

  private static Piece literal(String key, String text) {
    String rest = text.replace("{{", "").replace("}}", "");
    if (rest.indexOf('{') >= 0 || rest.indexOf('}') >= 0) {
      throw new IllegalArgumentException(key + ": a brace that is no place: " + text);
    }
    String said = text.replace("{{", "{").replace("}}", "}");
    return arguments -> said;
  }

  private static Piece piece(String key, Matcher place) {
    int number = Integer.parseInt(place.group(1));
    String format = place.group(2);
    if (format != null) {
      return arguments -> String.format(Locale.ROOT, format, arguments[number]);
    }
    String one = place.group(3);
    String many = place.group(4);
    return one == null
        ? arguments -> plain(key, arguments[number])
        : arguments -> ((Number) arguments[number]).doubleValue() == 1 ? one : many;
  }

  /** A fraction printed without a format would show as many digits as it happens to have. */
  private static String plain(String key, Object argument) {
    if (argument instanceof Double || argument instanceof Float) {
      throw new IllegalArgumentException(key + ": a fraction needs a format, as in {0%.1f}");
    }
    return argument instanceof Path ? PrintedName.of(argument) : argument.toString();
  }

  @FunctionalInterface
  private interface Piece {
    String with(Object[] arguments);
  }
}
