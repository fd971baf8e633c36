package shinline.cli.report;

import shinline.cli.record.Origin;
import shinline.cli.words.Words;

/** Says on a page that nobody trained what it shows. */
public final class InventedMark {
  private InventedMark() {}

  /** Writes a line at the top of an invented page, and nothing on any other. */
  public static void write(Markup page, Origin origin) {
    if (origin == Origin.INVENTED) {
      page.leaf("p", Words.say("invented.page"), "class", "invented");
      page.own("\n");
    }
  }
}
