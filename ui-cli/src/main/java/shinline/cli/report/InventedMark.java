package shinline.cli.report;

import shinline.cli.record.Origin;
import shinline.cli.words.Words;

/** Says on a page that nobody trained what it shows. */
public final class InventedMark {
  private InventedMark() {}

  /** Writes a line at the top of an invented page, and nothing on any other. */
  public static void write(Markup page, Origin origin) {
    write(page, origin, Words.say("invented.page"));
  }

  /** The same in a word, for a part that is cut off its page. */
  public static void inShort(Markup page, Origin origin) {
    write(page, origin, Words.say("invented.part"));
  }

  private static void write(Markup page, Origin origin, String words) {
    if (origin == Origin.INVENTED) {
      page.leaf("p", words, "class", "invented");
      page.line();
    }
  }
}
