package shinline.metrics.result;

/** What a limit is set on, with the words for a value on either side of it. */
public enum Aspect {
  SHIN("shin", "short", "too far"),
  KNEE("knee", "short", "too far"),
  THIGH("thigh", "too low", "too high"),
  REAR_KNEE("rear knee", "too low", "too high"),
  HIP_TRAVEL("hip travel", "too little", "too much"),
  TRUNK("trunk", "too upright", "too far forward"),
  LOWERING("lowering", "too short", "too long"),
  HOLD("hold", "too short", "too long"),
  DRIVE("drive", "too short", "too long"),
  TOP("top", "too short", "too long");

  private final String noun;
  private final String below;
  private final String above;

  Aspect(String noun, String below, String above) {
    this.noun = noun;
    this.below = below;
    this.above = above;
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
