package shinline.metrics.plausibility;

/**
 * What a body cannot do in a split squat. Wide on purpose: inside them a value may still be wrong,
 * outside it is.
 *
 * @param trunkLean mid-hip to mid-shoulder against the vertical; −30 to 90°
 * @param shin front ankle to knee against the vertical; −30 to 75°
 * @param thigh front knee to hip against the horizontal; −45 to 95°
 * @param kneeFlexion front knee; −5 to 165°
 * @param lengthShare how far a segment may be off the clip's own middle length, share of it; 0.25
 * @param rawSlackDeg how much wider the ranges are before joint centres and tilt are put right; 10°
 */
public record BodyLimits(
    Range trunkLean,
    Range shin,
    Range thigh,
    Range kneeFlexion,
    double lengthShare,
    double rawSlackDeg) {

  public static final BodyLimits DEFAULT =
      new BodyLimits(
          new Range(-30, 90), new Range(-30, 75), new Range(-45, 95), new Range(-5, 165), 0.25, 10);

  public BodyLimits {
    if (!(lengthShare > 0 && lengthShare < 1 && rawSlackDeg >= 0)) {
      throw new IllegalArgumentException(
          "length share " + lengthShare + ", slack " + rawSlackDeg + " deg");
    }
  }
}
