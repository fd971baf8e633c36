package shinline.metrics.result;

import java.util.Locale;

/** Faults the tool points at; limits, sources and blind spots are in docs/measures.md. */
public enum FlagKind {
  LEAN_GROWS,
  HIPS_FIRST,
  BACK_ROUNDS,
  BACK_ARCHES,
  HINGE_SHIFT,
  HEEL_RISE,
  FOREFOOT_RISE,
  REAR_PUSH,
  SHALLOW,
  LOWERING_RUSHED,
  HOLD_SKIPPED,
  DRIVE_SLOW,
  WOBBLE,
  SHIN_OFF_TARGET;

  /** Name in the result format, for example {@code lean-grows}. */
  public String jsonName() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
