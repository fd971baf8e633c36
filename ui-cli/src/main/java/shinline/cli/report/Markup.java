package shinline.cli.report;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Base64;
import java.util.Deque;
import java.util.regex.Pattern;
import shinline.cli.words.Words;

/**
 * Builds HTML and inline SVG; elements are closed in the order they were opened. What comes from
 * outside, such as a clip's name, is made harmless here and nowhere else, by where it stands: a
 * text or an attribute's value is escaped; an address leads to a place in the page or a file beside
 * it; what a browser would run takes nothing but what ships with the program.
 */
public final class Markup {
  /** Stands for the first piece in a text; Unicode keeps it for private use. */
  private static final char FIRST_MARK = '\ue000';

  private static final Pattern NEAR = Pattern.compile("#[\\w-]+|[\\p{L}\\p{N}._%-][^:]*");

  private static final String JPEG = "data:image/jpeg;base64,";

  private final StringBuilder out = new StringBuilder(1 << 16);
  private final Deque<String> open = new ArrayDeque<>();

  /**
   * Opens an element.
   *
   * @param attributes names and values in turn
   */
  public Markup open(String element, String... attributes) {
    start(element, attributes);
    out.append('>');
    open.push(element);
    return this;
  }

  /** An element without an end tag in HTML, or without content in SVG. */
  public Markup empty(String element, String... attributes) {
    start(element, attributes);
    out.append(SVG_SHAPES.contains(element) ? "/>" : ">");
    return this;
  }

  private static final java.util.Set<String> SVG_SHAPES =
      java.util.Set.of("line", "rect", "polyline");

  private void start(String element, String... attributes) {
    if (attributes.length % 2 != 0) {
      throw new IllegalArgumentException("an attribute of " + element + " has no value");
    }
    out.append('<').append(element);
    for (int i = 0; i < attributes.length; i += 2) {
      refuseUnfit(attributes[i], attributes[i + 1]);
      out.append(' ').append(attributes[i]).append("=\"");
      escape(attributes[i + 1]);
      out.append('"');
    }
  }

  private static void refuseUnfit(String attribute, String value) {
    boolean fits =
        switch (attribute) {
          case "href" -> NEAR.matcher(value).matches();
          case "src" -> value.startsWith(JPEG);
          case "style", "srcdoc", "srcset" -> false;
          default -> !attribute.startsWith("on");
        };
    if (!fits) {
      throw new IllegalArgumentException(attribute + " must not be " + value);
    }
  }

  /** A picture that is part of the page. */
  public Markup picture(byte[] jpeg, String alt, String... attributes) {
    String[] all = Arrays.copyOf(attributes, attributes.length + 4);
    all[attributes.length] = "src";
    all[attributes.length + 1] = JPEG + Base64.getEncoder().encodeToString(jpeg);
    all[attributes.length + 2] = "alt";
    all[attributes.length + 3] = alt;
    return empty("img", all);
  }

  /** Closes the element opened last. */
  public Markup close() {
    out.append("</").append(open.pop()).append('>');
    return this;
  }

  /** Closes the element opened last and starts a new line: a page a person can read. */
  public Markup end() {
    close();
    out.append('\n');
    return this;
  }

  public Markup text(String text) {
    escape(text);
    return this;
  }

  /** An element with text in it. */
  public Markup leaf(String element, String text, String... attributes) {
    return open(element, attributes).text(text).close();
  }

  /** Part of the page that stands in a text. */
  @FunctionalInterface
  public interface Piece {
    void write(Markup page);
  }

  /** A text of the bundle with markup in its places. */
  public Markup words(String key, Piece... pieces) {
    Object[] marks = new Object[pieces.length];
    Arrays.setAll(marks, i -> String.valueOf((char) (FIRST_MARK + i)));
    String text = Words.say(key, marks);
    int from = 0;
    for (int at = 0; at < text.length(); at++) {
      int place = text.charAt(at) - FIRST_MARK;
      if (place >= 0 && place < pieces.length) {
        text(text.substring(from, at));
        pieces[place].write(this);
        from = at + 1;
      }
    }
    return text(text.substring(from));
  }

  /** Opens a document. */
  public Markup document(String language) {
    out.append("<!doctype html>\n");
    return open("html", "lang", language);
  }

  /** A new line, for a page a person can read. */
  public Markup line() {
    out.append('\n');
    return this;
  }

  /** A style sheet or a script that ships with the program; it stands as it is. */
  Markup shipped(String element, String text) {
    if (text.contains("</")) {
      throw new IllegalArgumentException(element + " would end before its end");
    }
    open(element);
    out.append(text);
    return close();
  }

  private void escape(String text) {
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(allowed(c) ? c : '\ufffd');
              }
            });
  }

  /**
   * Control characters are not allowed in HTML, and half a character cannot be written as UTF-8.
   */
  private static boolean allowed(int c) {
    return (c >= ' ' && c != '\u007f' || c == '\n' || c == '\t')
        && (c < Character.MIN_SURROGATE || c > Character.MAX_SURROGATE);
  }

  /**
   * @throws IllegalStateException when an element was left open
   */
  public String done() {
    if (!open.isEmpty()) {
      throw new IllegalStateException("left open: " + open);
    }
    return out.toString();
  }
}
