package shinline.cli.report;

import shinline.cli.words.Words;
import shinline.metrics.result.RepResult;
import shinline.metrics.result.Verdict;

/**
 * How a rep stands as a sign, a word and a class of the style sheet: colour is never needed. A rep
 * with a fault that spoils it is never shown as good, and one of which nothing was asked has no
 * verdict.
 */
enum Mark {
  HIT("✓", "mark-hit"),
  NEAR("≈", "mark-near"),
  MISS("✗", "mark-miss"),
  UNCLEAR("?", "mark-unclear"),
  /** On target or near it, with a fault that spoils the rep. */
  NOT_CLEAN("!", "mark-flag"),
  /** Nothing asked, and a fault that spoils the rep. */
  FAULT("!", "mark-flag"),
  /** Nothing asked. */
  MEASURED("–", "mark-none");

  private final String sign;
  private final String styleClass;

  Mark(String sign, String styleClass) {
    this.sign = sign;
    this.styleClass = styleClass;
  }

  /** Of a rep as a whole. */
  static Mark of(RepResult rep) {
    if (rep.judgement().notJudged().isPresent()) {
      return UNCLEAR;
    }
    if (rep.verdict().isEmpty()) {
      return rep.spoilt() ? FAULT : MEASURED;
    }
    Mark mark = of(rep.verdict().get());
    return rep.spoilt() && (mark == HIT || mark == NEAR) ? NOT_CLEAN : mark;
  }

  /** Of one limit. */
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
    return Words.of(this, "name");
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
