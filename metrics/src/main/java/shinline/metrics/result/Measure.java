package shinline.metrics.result;

/** What is measured at the bottom of a rep; definitions and signs are in docs/measures.md. */
public enum Measure {
  SHIN("shinDeg", MeasureUnit.DEGREES, Needs.ONE_POSTURE),
  KNEE_PAST_TOE("kneePastToeCm", MeasureUnit.CENTIMETRES, Needs.ONE_POSTURE),
  KNEE_PAST_TOE_FOOT("kneePastToeFootPct", MeasureUnit.PERCENT_OF_FOOT, Needs.ONE_POSTURE),
  TRUNK_LEAN("trunkLeanDeg", MeasureUnit.DEGREES, Needs.ONE_POSTURE),
  THIGH("thighDeg", MeasureUnit.DEGREES, Needs.ONE_POSTURE),
  KNEE_FLEXION("kneeFlexionDeg", MeasureUnit.DEGREES, Needs.ONE_POSTURE),
  HIP_FLEXION("hipFlexionDeg", MeasureUnit.DEGREES, Needs.ONE_POSTURE),
  REAR_KNEE_HEIGHT("rearKneeHeightCm", MeasureUnit.CENTIMETRES, Needs.ONE_POSTURE),
  HIP_TRAVEL("hipTravelCm", MeasureUnit.CENTIMETRES, Needs.MOTION),
  HIP_TRAVEL_LEG("hipTravelLegPct", MeasureUnit.PERCENT_OF_LEG, Needs.MOTION);

  private final String jsonName;
  private final MeasureUnit unit;
  private final Needs needs;

  Measure(String jsonName, MeasureUnit unit, Needs needs) {
    this.jsonName = jsonName;
    this.unit = unit;
    this.needs = needs;
  }

  /** What has to be seen to tell it. */
  private enum Needs {
    ONE_POSTURE,
    /** Another posture of the same rep. */
    MOTION
  }

  /** Whether a still picture can show it. */
  public boolean seenInOnePosture() {
    return needs == Needs.ONE_POSTURE;
  }

  /** Name in the result format. */
  public String jsonName() {
    return jsonName;
  }

  public MeasureUnit unit() {
    return unit;
  }
}
