package shinline.cli.words;

/**
 * A file's name as it may be printed. Names come from anywhere, and a terminal obeys what is in
 * them: it could be cleared, coloured, or made to show a line that this program never wrote.
 */
public final class PrintedName {
  private static final char INSTEAD = '\ufffd';

  private PrintedName() {}

  /** The name with a mark in place of each character that is an order to a terminal. */
  public static String of(Object name) {
    return cleaned(name.toString(), "");
  }

  /** Lines that may have such a name in them; their ends and tabs stay. */
  public static String inLines(String lines) {
    return cleaned(lines, "\n\t");
  }

  private static String cleaned(String text, String kept) {
    StringBuilder clean = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            sign -> {
              boolean order =
                  Character.isISOControl(sign)
                      || Character.getType(sign) == Character.FORMAT
                      || Character.getType(sign) == Character.LINE_SEPARATOR
                      || Character.getType(sign) == Character.PARAGRAPH_SEPARATOR;
              clean.appendCodePoint(order && kept.indexOf(sign) < 0 ? INSTEAD : sign);
            });
    return clean.toString();
  }
}
