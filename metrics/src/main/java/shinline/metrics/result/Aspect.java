package shinline.metrics.result;

/** What a limit is set on. */
public enum Aspect {
  SHIN(MeasureUnit.DEGREES),
  KNEE(MeasureUnit.CENTIMETRES),
  THIGH(MeasureUnit.DEGREES),
  REAR_KNEE(MeasureUnit.CENTIMETRES),
  HIP_TRAVEL(MeasureUnit.CENTIMETRES),
  TRUNK(MeasureUnit.DEGREES),
  LOWERING(MeasureUnit.SECONDS),
  HOLD(MeasureUnit.SECONDS),
  DRIVE(MeasureUnit.SECONDS),
  TOP(MeasureUnit.SECONDS);

  private final MeasureUnit unit;

  Aspect(MeasureUnit unit) {
    this.unit = unit;
  }

  public MeasureUnit unit() {
    return unit;
  }
}
