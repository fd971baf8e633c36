package shinline.cli.text;

import java.nio.charset.Charset;

/** The signs beyond ASCII that the output uses, with a spelling for terminals without them. */
public enum Typography {
  RICH("±", "–", "°", "─"),
  PLAIN("+-", "-", " deg", "-");

  private final String plusMinus;
  private final String dash;
  private final String degree;
  private final String rule;

  Typography(String plusMinus, String dash, String degree, String rule) {
    this.plusMinus = plusMinus;
    this.dash = dash;
    this.degree = degree;
    this.rule = rule;
  }

  /** The richest set of signs the charset can write. */
  public static Typography of(Charset charset) {
    return charset.canEncode()
            && charset.newEncoder().canEncode(RICH.plusMinus + RICH.dash + RICH.degree + RICH.rule)
        ? RICH
        : PLAIN;
  }

  public String plusMinus() {
    return plusMinus;
  }

  /** Stands for a value that was not measured. */
  public String dash() {
    return dash;
  }

  /** Follows a number of degrees in running text. */
  public String degree() {
    return degree;
  }

  /** One cell of a horizontal line. */
  public String rule() {
    return rule;
  }
}
