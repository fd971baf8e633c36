package shinline.metrics.progress;

/** What is followed over the weeks, in the order of reading: the first three come first. */
public enum Followed {
  /** Mass of one dumbbell, or of the bar with its discs. */
  LOAD,
  /** Shin angle at the bottom, degrees. */
  SHIN,
  /** Thigh angle at the bottom, degrees: 0 is parallel, less is deeper. */
  DEPTH,
  /** Trunk lean at the bottom, degrees. */
  TRUNK,
  /** Seconds. */
  LOWERING,
  /** Seconds. */
  HOLD,
  /** Mean upward speed of mid-hip in the drive, m/s. */
  DRIVE_SPEED,
  /** Mean upward speed of the bar's end in the drive, m/s. */
  BAR_SPEED,
  /** Estimated load for one rep. */
  MAXIMUM;

  /** Whether it is a mass: exact as written down, or an estimate without a ± of its own. */
  public boolean isMass() {
    return this == LOAD || this == MAXIMUM;
  }
}
