package shinline.cli.report;

import shinline.metrics.result.Verdict;

/** A verdict as a sign, a word and a class of the style sheet: colour is never needed. */
enum Mark {
  HIT("✓", "hit"),
  NEAR("≈", "near"),
  MISS("✗", "miss"),
  UNCLEAR("?", "unclear");

  private final String sign;
  private final String word;

  Mark(String sign, String word) {
    this.sign = sign;
    this.word = word;
  }

  static Mark of(Verdict verdict) {
    return switch (verdict) {
      case HIT -> HIT;
      case NEAR -> NEAR;
      case MISS -> MISS;
      case UNCLEAR -> UNCLEAR;
    };
  }

  String sign() {
    return sign;
  }

  String word() {
    return word;
  }

  /** Name in the style sheet. */
  String styleClass() {
    return "mark-" + word;
  }

  /** The sign for the eye, the word for a screen reader. */
  void write(Markup page) {
    page.leaf("span", sign, "class", "sign", "aria-hidden", "true");
    page.leaf("span", " " + word, "class", "spoken");
  }
}
