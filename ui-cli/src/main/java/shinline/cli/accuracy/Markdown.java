package shinline.cli.accuracy;

import java.util.Locale;

/** Tables of the page. */
final class Markdown {
  /** A cell without a figure. */
  static final String NONE = "–";

  private Markdown() {}

  static String row(String... cells) {
    return "| " + String.join(" | ", cells) + " |";
  }

  /** Words to the left, numbers to the right. */
  static String rule(int words, int numbers) {
    return "|" + " --- |".repeat(words) + " ---: |".repeat(numbers);
  }

  static String percent(double share) {
    return String.format(Locale.ROOT, "%.0f %%", 100 * share);
  }
}
