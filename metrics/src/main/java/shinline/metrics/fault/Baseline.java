package shinline.metrics.fault;

/** Which posture of the athlete a fault's value is counted from. */
public enum Baseline {
  /** The bottom of the set's first rep. */
  FIRST_REP,
  /** Standing, before the same rep. */
  TOP_OF_REP,
  /** The bottom of the same rep. */
  BOTTOM_OF_REP,
  /** None that is a posture of the trunk: the floor, a time, the set's usual value. */
  OTHER
}
