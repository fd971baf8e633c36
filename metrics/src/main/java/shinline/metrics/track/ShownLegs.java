package shinline.metrics.track;

/**
 * What the clip alone shows of the stance, whatever was told.
 *
 * @param facing side of the picture the athlete seems to face
 * @param facingAgreement share of the evidence for that side, 0.5…1
 * @param frontLeg the leg that seems to be ahead
 * @param frontLegClear whether that evidence leaves no doubt
 */
public record ShownLegs(
    Side facing, double facingAgreement, Side frontLeg, boolean frontLegClear) {}
