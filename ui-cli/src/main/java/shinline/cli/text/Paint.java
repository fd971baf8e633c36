package shinline.cli.text;

import shinline.metrics.result.Verdict;

/** Colour on a terminal that wants it; every meaning is in the words as well. */
public enum Paint {
  COLOUR,
  NONE;

  private static final String RESET = "\u001b[0m";

  public String verdict(Verdict verdict, String text) {
    return paint(
        switch (verdict) {
          case HIT -> "\u001b[32m";
          case NEAR -> "\u001b[33m";
          case MISS -> "\u001b[31m";
          case UNCLEAR -> "\u001b[36m";
        },
        text);
  }

  public String heading(String text) {
    return paint("\u001b[1m", text);
  }

  private String paint(String code, String text) {
    return this == COLOUR ? code + text + RESET : text;
  }
}
