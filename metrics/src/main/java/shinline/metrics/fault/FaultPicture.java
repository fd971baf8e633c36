package shinline.metrics.fault;

/** What the picture of a fault points at. */
public enum FaultPicture {
  /** The trunk now against the trunk before. */
  TRUNK_CHANGE,
  /** The outline of the back against the one in standing. */
  BACK_OUTLINE,
  HEEL,
  FOREFOOT,
  REAR_LEG,
  /** The way of the front knee. */
  KNEE_WAY,
  /** How deep the hip is against the set's deepest rep. */
  DEPTH,
  /** The front shin, and the knee against the toe line. */
  SHIN,
  /** A time: a still picture has nothing to point at. */
  LOWERING,
  /** A time, as above. */
  HOLD,
  /** A time, as above. */
  DRIVE;

  /** Whether any picture of the rep's bottom shows it. */
  public boolean isSeenAtBottom() {
    return this == SHIN || this == DEPTH;
  }
}
