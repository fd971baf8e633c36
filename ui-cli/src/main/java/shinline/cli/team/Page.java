package shinline.cli.team;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import shinline.cli.report.InventedMark;
import shinline.cli.report.Markup;
import shinline.cli.report.PageParts;
import shinline.cli.text.Cautions;
import shinline.cli.words.Words;

/** What the pages of a session have in common: one file each, nothing fetched, no script. */
final class Page {
  private static final String STYLE = PageParts.resource(Page.class, "session.css");

  private final Markup out = new Markup();
  private final SessionView session;

  /**
   * @param kind class of the body: how the style sheet tells pages apart
   * @param refreshS seconds after which a browser reads the page anew
   */
  Page(SessionView session, String kind, String title, Optional<Integer> refreshS) {
    this.session = session;
    PageParts.head(out, title, STYLE, Optional.empty(), refreshS);
    out.open("body", "class", kind).open("main").line();
    InventedMark.write(out, session.origin());
  }

  /** Says on a part that is cut off the page that nobody trained this, where that is so. */
  void inventedInShort() {
    InventedMark.inShort(out, session.origin());
  }

  Markup out() {
    return out;
  }

  /** A picture of a clip, in the page itself; nothing when the file is gone. */
  void picture(Optional<String> name, String alt, String kind) {
    name.flatMap(this::bytes).ifPresent(b -> out.picture(b, alt, "class", kind));
  }

  private Optional<byte[]> bytes(String name) {
    try {
      return Optional.of(Files.readAllBytes(session.clips().resolve(name)));
    } catch (IOException gone) {
      return Optional.empty();
    }
  }

  /** A link to a clip's page, which lies in a folder beside. */
  void link(Optional<String> page, String text) {
    if (page.isPresent()) {
      Path folder = session.clips().getFileName();
      String name =
          java.net.URLEncoder.encode(page.get(), StandardCharsets.UTF_8).replace("+", "%20");
      out.leaf("a", text, "href", folder + "/" + name);
    } else {
      out.text(text);
    }
  }

  void cautions() {
    out.open("section", "class", "cautions");
    out.leaf("h2", Words.say("advice.cautions.head"));
    out.open("ul");
    Cautions.all().forEach(c -> out.leaf("li", c));
    out.close().end();
  }

  String done() {
    out.end();
    out.close().end();
    return out.done();
  }
}
