package shinline.metrics.training;

/** What the athlete said about pain in a set. */
public enum Pain {
  YES,
  NO,
  NOT_ASKED
}
