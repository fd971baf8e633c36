package shinline.cli.words;

import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;
import java.util.ResourceBundle;

/**
 * Every word that a person reads, from {@code shinline/cli/words.properties}: a translation is one
 * file. How a text takes its arguments is said in {@link Phrase} and at the head of that file.
 *
 * <p>A key is a literal, or follows from an enum constant, so that a test can hold every use
 * against the bundle. A missing key or argument is a programming error.
 */
public final class Words {
  // ROOT: the output is the same on every machine, whatever language its user has set.
  private static final ResourceBundle BUNDLE =
      ResourceBundle.getBundle("shinline.cli.words", Locale.ROOT);

  private Words() {}

  /** For picocli, which finds descriptions of commands and options by its own keys. */
  public static ResourceBundle bundle() {
    return BUNDLE;
  }

  /**
   * The text of that key.
   *
   * @param arguments for its placeholders, in order of their numbers
   * @throws IllegalArgumentException if the key is missing or the arguments do not fit its text
   */
  public static String say(String key, Object... arguments) {
    return Phrase.parse(key, text(key)).fill(arguments);
  }

  /**
   * What is said of one kind: the text of the key {@code type.constant.aspect}, each in lower case
   * with hyphens, for example {@code flag-kind.heel-rise.name}. The bundle has the aspect for every
   * constant of the type; a text need not use all arguments.
   */
  public static String of(Enum<?> kind, String aspect, Object... arguments) {
    String key = key(kind, aspect);
    return Phrase.parse(key, text(key)).fillFrom(arguments);
  }

  /** The lines of a text that has several, without their ends. */
  public static List<String> lines(String key, Object... arguments) {
    return List.of(say(key, arguments).split("\n", -1));
  }

  static String key(Enum<?> kind, String aspect) {
    return hyphens(kind.getDeclaringClass().getSimpleName().replaceAll("(?<=.)([A-Z])", "_$1"))
        + "."
        + hyphens(kind.name())
        + "."
        + aspect;
  }

  private static String hyphens(String name) {
    return name.toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String text(String key) {
    try {
      return BUNDLE.getString(key);
    } catch (MissingResourceException e) {
      throw new IllegalArgumentException("no words for the key " + key, e);
    }
  }
}
