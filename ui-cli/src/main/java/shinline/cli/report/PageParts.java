package shinline.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import shinline.cli.file.TextDigest;
import shinline.cli.words.Words;

/** What every page that opens offline is held together by: its own style and script, no other. */
public final class PageParts {
  private PageParts() {}

  /**
   * A style sheet or script that is shipped.
   *
   * @param beside the class whose package holds it
   */
  public static String resource(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException(name + " is missing from the program");
      }
      // A browser hashes what it reads, and it reads every line end as a line feed.
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A content policy that allows pictures in the page and one style sheet. */
  public static String policy(String style) {
    return "default-src 'none'; img-src data:; style-src '"
        + hash(style)
        + "'; base-uri 'none'; form-action 'none'";
  }

  /** A content policy that allows pictures in the page, one style sheet and one script. */
  static String policy(String style, String script) {
    return "default-src 'none'; img-src data:; style-src '"
        + hash(style)
        + "'; script-src '"
        + hash(script)
        + "'; base-uri 'none'; form-action 'none'";
  }

  /** Head and the beginning of the body. */
  static void start(Markup page, String title, String style, String policy) {
    page.own("<!doctype html>\n").open("html", "lang", Words.say("language")).open("head");
    page.empty("meta", "charset", "utf-8");
    page.empty("meta", "http-equiv", "Content-Security-Policy", "content", policy);
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.empty("meta", "name", "color-scheme", "content", "light dark");
    page.empty("meta", "name", "referrer", "content", "no-referrer");
    page.leaf("title", title);
    page.open("style").own(style).close().end();
    page.open("body");
  }

  private static String hash(String text) {
    return "sha256-" + Base64.getEncoder().encodeToString(TextDigest.of(text));
  }
}
