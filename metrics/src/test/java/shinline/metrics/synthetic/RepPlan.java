package shinline.metrics.synthetic;

import java.util.EnumSet;
import java.util.Set;
import shinline.metrics.fault.FlagKind;

/**
 * One rep as it is to be moved. Angles as in docs/measures.md, degrees; lengths in seconds from
 * turning point to turning point, so the phases by the five per cent rule differ.
 *
 * @param faults built into the motion
 */
public record RepPlan(
    double loweringS,
    double holdS,
    double driveS,
    double restS,
    double shinDeg,
    double thighDeg,
    double trunkDeg,
    Set<FlagKind> faults) {

  /** Knee well ahead, thigh about parallel, an unhurried tempo. */
  public static RepPlan clean() {
    return new RepPlan(2.4, 1.0, 1.1, 1.0, 25, 5, 14, EnumSet.noneOf(FlagKind.class));
  }

  public RepPlan bottom(double shin, double thigh, double trunk) {
    return new RepPlan(loweringS, holdS, driveS, restS, shin, thigh, trunk, faults);
  }

  public RepPlan tempo(double lowering, double hold, double drive) {
    return new RepPlan(lowering, hold, drive, restS, shinDeg, thighDeg, trunkDeg, faults);
  }

  /** The same rep with a fault clearly beyond its limit. */
  public RepPlan with(FlagKind fault) {
    RepPlan base =
        switch (fault) {
          case LEAN_GROWS -> bottom(shinDeg, thighDeg, trunkDeg + 8);
          case HINGE_SHIFT -> bottom(shinDeg - 14, thighDeg, trunkDeg + 2);
          case SHALLOW -> bottom(shinDeg - 4, thighDeg + 17, trunkDeg - 1);
          case LOWERING_RUSHED -> tempo(1.0, holdS, driveS);
          case HOLD_SKIPPED -> tempo(loweringS, 0, driveS);
          case DRIVE_SLOW -> tempo(loweringS, holdS, 2.2);
          default -> this;
        };
    EnumSet<FlagKind> more = EnumSet.of(fault);
    more.addAll(faults);
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

  double lengthS() {
    return loweringS + holdS + driveS;
  }
}
