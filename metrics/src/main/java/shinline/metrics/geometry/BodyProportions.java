package shinline.metrics.geometry;

/**
 * Average body lengths as fractions of stature: good for a scale and for plausibility, not for one
 * athlete's own bones (expect a few per cent off).
 *
 * <ol>
 *   <li>R. Drillis, R. Contini 1966, in D. A. Winter, <i>Biomechanics and Motor Control of Human
 *       Movement</i>, 4th ed., Wiley 2009, fig. 4.1.
 * </ol>
 *
 * @param statureM standing height without shoes, metres; 0.9 to 2.5
 */
public record BodyProportions(double statureM) {

  private static final double ANKLE_HEIGHT = 0.039;
  private static final double KNEE_HEIGHT = 0.285;
  private static final double HIP_HEIGHT = 0.530;
  private static final double SHOULDER_HEIGHT = 0.818;
  private static final double THIGH = 0.245;
  private static final double SHANK = 0.246;
  private static final double FOOT = 0.152;
  private static final double TRUNK = 0.288;

  public BodyProportions {
    if (!(statureM >= 0.9 && statureM <= 2.5)) {
      throw new IllegalArgumentException(
          "stature of " + statureM + " m; 0.9 to 2.5 m are possible");
    }
  }

  public double ankleHeightM() {
    return ANKLE_HEIGHT * statureM;
  }

  public double kneeHeightM() {
    return KNEE_HEIGHT * statureM;
  }

  public double hipHeightM() {
    return HIP_HEIGHT * statureM;
  }

  public double shoulderHeightM() {
    return SHOULDER_HEIGHT * statureM;
  }

  public double thighM() {
    return THIGH * statureM;
  }

  public double shankM() {
    return SHANK * statureM;
  }

  public double footM() {
    return FOOT * statureM;
  }

  public double trunkM() {
    return TRUNK * statureM;
  }

  /** Hip to ankle along a straight leg: thigh and shank together. */
  public double legM() {
    return thighM() + shankM();
  }
}
