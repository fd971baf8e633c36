package shinline.metrics.result;

/** Why a value is missing. */
public enum Gap {
  /** The points that it needs were not seen at the bottom. */
  UNSEEN_AT_BOTTOM,
  /** What was seen at the bottom no body can do. */
  IMPOSSIBLE,
  /** Something lies before the shoulders that it needs. */
  SHOULDERS_HIDDEN,
  /** A length without a scale. */
  NO_SCALE,
  /** The time at the top after the set's last rep. */
  NO_REP_FOLLOWS,
  /** A speed of a drive that was seen in part. */
  DRIVE_NOT_WHOLE,
  /** A bar on the back that was not seen through the drive. */
  BAR_NOT_SEEN,
  /** It is told of a movement, and there is one posture. */
  ONE_POSTURE,
  /** Nobody tried to read it. */
  NOT_READ
}
