package shinline.metrics.advice;

import java.util.Locale;

/** The rules of what is next (docs/ladder.md), as given for a reason. */
public enum Rule {
  PAIN_NOT_CLEARED,
  NO_WORK_SET,
  START_STEP,
  FIRST_AFTER_CLEARANCE,
  LONG_BREAK,
  BREAK,
  SHORT_BREAK,
  FEW_CLEAN_TWICE,
  LEG_MISSING,
  STEP_UNKNOWN,
  EARNED,
  NOT_EARNED,
  PAIN_NOT_ASKED,
  LEAVING_CONDITION,
  WEEKLY_RAISE,
  NEXT_LOAD_AT_HAND,
  NO_LOAD_AT_HAND,
  SOON_AFTER_RAISE,
  SOON_AFTER_CLEARANCE,
  LOAD_UNKNOWN,
  TARGET_UNKNOWN,
  NEXT_TARGET,
  NEXT_STEP,
  STEP_CLOSED,
  THREE_REP_MAXIMUM,
  TOP_OF_LADDER;

  /** As written in files, for example {@code weekly-raise}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
