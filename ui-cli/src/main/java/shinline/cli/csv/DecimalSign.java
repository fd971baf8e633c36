package shinline.cli.csv;

/** Sign before the decimals; where it is the comma, a semicolon parts the columns. */
public enum DecimalSign {
  POINT('.', ','),
  COMMA(',', ';');

  private final char sign;
  private final char separator;

  DecimalSign(char sign, char separator) {
    this.sign = sign;
    this.separator = separator;
  }

  char separator() {
    return separator;
  }

  /** A number as it stands in a cell. */
  public String cell(String number) {
    return number.replace('.', sign);
  }
}
