package shinline.metrics.advice;

/** What is next, in one word. */
public enum Decision {
  STOP,
  NOT_ENOUGH,
  EASE_BACK,
  STEP_BACK,
  RAISE_LOAD,
  NEXT_TARGET,
  NEXT_STEP,
  STAY
}
