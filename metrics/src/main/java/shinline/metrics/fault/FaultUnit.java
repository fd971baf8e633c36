package shinline.metrics.fault;

/** What a kind of fault is counted in. */
public enum FaultUnit {
  DEGREES,
  SECONDS,
  PERCENT,
  /** Shares of the athlete's standing height: told in centimetres once there is a scale. */
  STATURES,
  /** The unit of the coach's own limit. */
  AS_ASKED
}
