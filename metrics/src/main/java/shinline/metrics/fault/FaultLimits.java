package shinline.metrics.fault;

/**
 * Limits beyond which a fault is pointed at; every one is common practice or our own choice, set so
 * that it stays well above the noise of a clean rep (docs/measures.md tells which).
 *
 * @param leanGrowthDeg trunk lean at the bottom beyond the set's first rep
 * @param leanChangeDeg trunk lean from the top to the bottom of one rep
 * @param hipsFirstDeg lean gained out of the bottom, before the drive is over
 * @param hingeDeg change of the angle between trunk and shin against the set's first rep, with the
 *     hip moving back
 * @param hipBackShare of that: hip farther behind the ankle than in the first rep, share of stature
 * @param heelRiseShare heel above its own standing level, held, and above what the toe rises, share
 *     of stature
 * @param forefootRiseShare toe likewise above what the heel rises, share of stature
 * @param rearPushDeg rear knee opened in the first fifth of the drive, beyond the front knee's
 *     opening
 * @param shallowShare hip travel against the set's first reps
 * @param rushedShare lowering time against the set's slowest lowering
 * @param rushedS lowering shorter than this is rushed whatever the set
 * @param holdShare hold against the set's longest hold, where that was a real hold
 * @param realHoldS what a real hold is
 * @param driveShare mean drive speed, over travel, against the set's best
 * @param wobbleShare quick to and fro of the knee and hip in lowering and hold, root mean square,
 *     share of stature
 * @param roundShare bow of the back's outline at the bottom beyond that in standing, share of the
 *     trunk's length
 * @param archShare hollow of it at the bottom beyond that in standing, share of the trunk's length
 */
public record FaultLimits(
    double leanGrowthDeg,
    double leanChangeDeg,
    double hipsFirstDeg,
    double hingeDeg,
    double hipBackShare,
    double heelRiseShare,
    double forefootRiseShare,
    double rearPushDeg,
    double shallowShare,
    double rushedShare,
    double rushedS,
    double holdShare,
    double realHoldS,
    double driveShare,
    double wobbleShare,
    double roundShare,
    double archShare) {
  public static final FaultLimits DEFAULT =
      new FaultLimits(
          4, 35, 6, 10, 0.02, 0.0135, 0.0085, 12, 0.82, 0.6, 0.5, 0.45, 0.6, 0.7, 0.006, 0.035,
          0.025);

  /**
   * For points of a smaller model: it lifts the heel of a clean rep by up to 5 cm, so rises of the
   * foot are told only where nothing else could be meant.
   */
  public FaultLimits coarser() {
    return new FaultLimits(
        leanGrowthDeg + 1.5,
        leanChangeDeg,
        hipsFirstDeg + 2,
        hingeDeg + 2,
        hipBackShare,
        3.2 * heelRiseShare,
        3.2 * forefootRiseShare,
        rearPushDeg + 4,
        shallowShare,
        rushedShare,
        rushedS,
        holdShare,
        realHoldS,
        driveShare,
        1.5 * wobbleShare,
        roundShare,
        archShare);
  }
}
