package shinline.cli.text;

/** Units of printed lengths. Files always hold centimetres. */
public enum Units {
  METRIC("cm", 1),
  IMPERIAL("in", 1 / 2.54);

  private final String lengthSymbol;
  private final double perCm;

  Units(String lengthSymbol, double perCm) {
    this.lengthSymbol = lengthSymbol;
    this.perCm = perCm;
  }

  public String lengthSymbol() {
    return lengthSymbol;
  }

  public double fromCm(double cm) {
    return cm * perCm;
  }
}
