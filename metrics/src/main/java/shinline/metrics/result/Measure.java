package shinline.metrics.result;

/** What is measured at the bottom of a rep; definitions and signs are in docs/measures.md. */
public enum Measure {
  SHIN("shinDeg", MeasureUnit.DEGREES),
  KNEE_PAST_TOE("kneePastToeCm", MeasureUnit.CENTIMETRES),
  KNEE_PAST_TOE_FOOT("kneePastToeFootPct", MeasureUnit.PERCENT_OF_FOOT),
  TRUNK_LEAN("trunkLeanDeg", MeasureUnit.DEGREES),
  THIGH("thighDeg", MeasureUnit.DEGREES),
  KNEE_FLEXION("kneeFlexionDeg", MeasureUnit.DEGREES),
  HIP_FLEXION("hipFlexionDeg", MeasureUnit.DEGREES),
  REAR_KNEE_HEIGHT("rearKneeHeightCm", MeasureUnit.CENTIMETRES),
  HIP_TRAVEL("hipTravelCm", MeasureUnit.CENTIMETRES),
  HIP_TRAVEL_LEG("hipTravelLegPct", MeasureUnit.PERCENT_OF_LEG);

  private final String jsonName;
  private final MeasureUnit unit;

  Measure(String jsonName, MeasureUnit unit) {
    this.jsonName = jsonName;
    this.unit = unit;
  }

  /** Name in the result format. */
  public String jsonName() {
    return jsonName;
  }

  public MeasureUnit unit() {
    return unit;
  }
}
