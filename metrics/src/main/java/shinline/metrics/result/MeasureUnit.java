package shinline.metrics.result;

/** Units at the edge of the program; inside, angles are radians. */
public enum MeasureUnit {
  DEGREES("deg"),
  CENTIMETRES("cm"),
  PERCENT_OF_FOOT("%"),
  PERCENT_OF_LEG("%"),
  PERCENT("%"),
  SECONDS("s"),
  METRES_PER_SECOND("m/s");

  private final String symbol;

  MeasureUnit(String symbol) {
    this.symbol = symbol;
  }

  /** Plain ASCII symbol, as the JSON writes it. */
  public String symbol() {
    return symbol;
  }
}
