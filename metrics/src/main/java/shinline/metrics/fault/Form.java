package shinline.metrics.fault;

/**
 * Parts of an athlete's form, in the order in which fading form is named: of several faults in the
 * rep where it begins, the first part's counts.
 */
public enum Form {
  LEAN,
  BACK,
  HINGE,
  DEPTH,
  SPEED,
  TEMPO,
  FOOT,
  STEADINESS,
  /** No matter of form: what the coach asked for was not met. */
  TARGET
}
