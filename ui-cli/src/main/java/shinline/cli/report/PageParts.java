package shinline.cli.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
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

  /**
   * The page up to its body. Its content policy allows pictures in the page, this style sheet and
   * this script, by their hashes.
   *
   * @param refreshS seconds after which a browser reads the page anew
   */
  public static void head(
      Markup page,
      String title,
      String style,
      Optional<String> script,
      Optional<Integer> refreshS) {
    page.document(Words.say("language")).open("head");
    page.empty("meta", "charset", "utf-8");
    page.empty("meta", "http-equiv", "Content-Security-Policy", "content", policy(style, script));
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.empty("meta", "name", "referrer", "content", "no-referrer");
    refreshS.ifPresent(
        s -> page.empty("meta", "http-equiv", "refresh", "content", String.valueOf(s)));
    page.leaf("title", title);
    page.shipped("style", style).end();
  }

  private static String policy(String style, Optional<String> script) {
    return "default-src 'none'; img-src data:; style-src '"
        + hash(style)
        + script.map(s -> "'; script-src '" + hash(s)).orElse("")
        + "'; base-uri 'none'; form-action 'none'";
  }

  private static String hash(String text) {
    return "sha256-" + Base64.getEncoder().encodeToString(TextDigest.of(text));
  }
}
