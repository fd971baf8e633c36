package shinline.cli.report;

import shinline.cli.words.Words;
import shinline.metrics.result.Verdict;

/** A verdict as a sign, a word and a class of the style sheet: colour is never needed. */
enum Mark {
  HIT("✓", "mark-hit", Verdict.HIT),
  NEAR("≈", "mark-near", Verdict.NEAR),
  MISS("✗", "mark-miss", Verdict.MISS),
  UNCLEAR("?", "mark-unclear", Verdict.UNCLEAR);

  private final String sign;
  private final String styleClass;
  private final Verdict verdict;

  Mark(String sign, String styleClass, Verdict verdict) {
    this.sign = sign;
    this.styleClass = styleClass;
    this.verdict = verdict;
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
    return Words.of(verdict, "name");
  }

  /** Name in the style sheet. */
  String styleClass() {
    return styleClass;
  }

  /** The sign for the eye, the word for a screen reader. */
  void write(Markup page) {
    page.leaf("span", sign, "class", "sign", "aria-hidden", "true");
    page.leaf("span", " " + word(), "class", "spoken");
  }
}
