package shinline.metrics.result;

/** What a limit is set on, with the words for a value on either side of it. */
public enum Aspect {
  SHIN(MeasureUnit.DEGREES, "shin", "short", "too far"),
  KNEE(MeasureUnit.CENTIMETRES, "knee", "short", "too far"),
  THIGH(MeasureUnit.DEGREES, "thigh", "too low", "too high"),
  REAR_KNEE(MeasureUnit.CENTIMETRES, "rear knee", "too low", "too high"),
  HIP_TRAVEL(MeasureUnit.CENTIMETRES, "hip travel", "too little", "too much"),
  TRUNK(MeasureUnit.DEGREES, "trunk", "too upright", "too far forward"),
  LOWERING(MeasureUnit.SECONDS, "lowering", "too short", "too long"),
  HOLD(MeasureUnit.SECONDS, "hold", "too short", "too long"),
  DRIVE(MeasureUnit.SECONDS, "drive", "too short", "too long"),
  TOP(MeasureUnit.SECONDS, "top", "too short", "too long");

  private final MeasureUnit unit;
  private final String noun;
  private final String below;
  private final String above;

  Aspect(MeasureUnit unit, String noun, String below, String above) {
    this.unit = unit;
    this.noun = noun;
    this.below = below;
    this.above = above;
  }

  public MeasureUnit unit() {
    return unit;
  }

  /** Plain word, for example {@code rear knee}. */
  public String noun() {
    return noun;
  }

  /** Words for a value outside the given end, for example {@code too high}. */
  public String outside(Limit.End end) {
    return end == Limit.End.MIN ? below : above;
  }
}
