package shinline.metrics.calibration;

/** Units of calibrated values. */
public enum CalibrationUnit {
  /** Part of a whole that the key's meaning names; 1 is all of it. */
  SHARE("share"),
  DEGREES("°"),
  CENTIMETRES("cm"),
  PERCENT("%"),
  SECONDS("s"),
  /** A factor. */
  TIMES("times"),
  FRAMES("frames"),
  LOOKS("looks"),
  PER_SECOND("a second");

  private final String symbol;

  CalibrationUnit(String symbol) {
    this.symbol = symbol;
  }

  /** As written in the calibration file. */
  public String symbol() {
    return symbol;
  }
}
