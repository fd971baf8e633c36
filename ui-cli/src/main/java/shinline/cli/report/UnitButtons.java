package shinline.cli.report;

import shinline.cli.text.Units;
import shinline.cli.words.Words;

/**
 * The switch between centimetres and inches. It stands before everything it switches: the style
 * sheet looks from a chosen button to what follows it.
 */
final class UnitButtons {
  private UnitButtons() {}

  /**
   * @param chosen shown first
   */
  static void write(Markup page, Units chosen) {
    button(page, Units.METRIC, Words.say("report.centimetres"), chosen);
    button(page, Units.IMPERIAL, Words.say("report.inches"), chosen);
  }

  private static void button(Markup page, Units of, String name, Units chosen) {
    String id = "units-" + of.lengthSymbol();
    if (of == chosen) {
      page.empty("input", "type", "radio", "name", "units", "id", id, "checked", "");
    } else {
      page.empty("input", "type", "radio", "name", "units", "id", id);
    }
    page.leaf("label", name, "for", id);
  }
}
