package shinline.metrics.synthetic;

import java.util.EnumMap;
import java.util.Map;
import shinline.metrics.fault.FlagKind;

/**
 * One rep as it is to be moved. Angles as in docs/measures.md, degrees; lengths in seconds from
 * turning point to turning point, so the phases by the five per cent rule differ.
 *
 * @param faults built into the motion, and how much of each: see {@link #with(FlagKind, double)}
 */
public record RepPlan(
    double loweringS,
    double holdS,
    double driveS,
    double restS,
    double shinDeg,
    double thighDeg,
    double trunkDeg,
    Map<FlagKind, Double> faults) {

  /** Knee well ahead, thigh about parallel, an unhurried tempo. */
  public static RepPlan clean() {
    return new RepPlan(2.4, 1.0, 1.1, 1.0, 25, 5, 14, Map.of());
  }

  public RepPlan bottom(double shin, double thigh, double trunk) {
    return new RepPlan(loweringS, holdS, driveS, restS, shin, thigh, trunk, faults);
  }

  public RepPlan tempo(double lowering, double hold, double drive) {
    return new RepPlan(lowering, hold, drive, restS, shinDeg, thighDeg, trunkDeg, faults);
  }

  /** The same rep with a fault clearly beyond its limit. */
  public RepPlan with(FlagKind fault) {
    return with(
        fault,
        switch (fault) {
          case LEAN_GROWS -> 8;
          case HIPS_FIRST -> 13;
          case HINGE_SHIFT -> 14;
          case BACK_ROUNDS, BACK_ARCHES -> 0.09;
          case HEEL_RISE, FOREFOOT_RISE -> 0.03;
          case REAR_PUSH -> 0.07;
          case WOBBLE -> 4;
          case SHALLOW -> 17;
          case LOWERING_RUSHED -> 1.4;
          case HOLD_SKIPPED -> 1;
          case DRIVE_SLOW -> 1.1;
          case SHIN_OFF_TARGET -> 15;
        });
  }

  /**
   * The same rep with a fault.
   *
   * @param amount how much of it: trunk degrees more ({@code LEAN_GROWS}, {@code HIPS_FIRST}), shin
   *     degrees less ({@code HINGE_SHIFT}) or more ({@code SHIN_OFF_TARGET}) or to and fro ({@code
   *     WOBBLE}), thigh degrees higher ({@code SHALLOW}), seconds less or, of the drive, more;
   *     trunk lengths of the back's bow, statures of the feet's ways
   */
  public RepPlan with(FlagKind fault, double amount) {
    RepPlan base =
        switch (fault) {
          case LEAN_GROWS -> bottom(shinDeg, thighDeg, trunkDeg + amount);
          case HINGE_SHIFT -> bottom(shinDeg - amount, thighDeg, trunkDeg + 2);
          case SHIN_OFF_TARGET -> bottom(shinDeg + amount, thighDeg, trunkDeg);
          case SHALLOW ->
              bottom(shinDeg - amount * 4 / 17, thighDeg + amount, trunkDeg - amount / 17);
          case LOWERING_RUSHED -> tempo(loweringS - amount, holdS, driveS);
          case HOLD_SKIPPED -> tempo(loweringS, holdS - amount, driveS);
          case DRIVE_SLOW -> tempo(loweringS, holdS, driveS + amount);
          default -> this;
        };
    Map<FlagKind, Double> more = new EnumMap<>(FlagKind.class);
    more.putAll(faults);
    more.put(fault, amount);
    return new RepPlan(
        base.loweringS,
        base.holdS,
        base.driveS,
        base.restS,
        base.shinDeg,
        base.thighDeg,
        base.trunkDeg,
        more);
  }

  /** How much of a fault was built in; 0 for none. */
  double amount(FlagKind fault) {
    return faults.getOrDefault(fault, 0.0);
  }

  double lengthS() {
    return loweringS + holdS + driveS;
  }
}
