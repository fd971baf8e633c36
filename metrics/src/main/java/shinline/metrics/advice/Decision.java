package shinline.metrics.advice;

import java.util.Locale;

/** What is next, in one word. */
public enum Decision {
  STOP,
  NOT_ENOUGH,
  EASE_BACK,
  STEP_BACK,
  RAISE_LOAD,
  NEXT_TARGET,
  NEXT_STEP,
  STAY;

  /** As written in files, for example {@code raise-load}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
