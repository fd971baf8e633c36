package shinline.metrics.interval;

import java.util.EnumMap;
import java.util.Map;
import shinline.metrics.result.Measure;

/**
 * From what was seen to a ±: half width of the interval that holds the true value 95 times in 100.
 *
 * <p>Variances of independent causes add up: what the model and the correction get wrong from
 * athlete to athlete (from clips left out of the fit, {@link #systematic}), an unknown roll of the
 * camera (1:1 on angles to the vertical), the view off the side (small angles and lengths shrink by
 * cos yaw), the scale, the jitter of the points in this very clip (σ ≈ √2·σ_px / L_px), and how
 * sure the model was of them.
 *
 * @param systematic standard deviation of each measure over athletes, in its own unit
 * @param unknownRollDeg standard deviation of a phone's roll on a stand when nothing tells it
 * @param scaleShare standard deviation of the scale, share of the length
 * @param doubtFactor how much wider a value is when its points are unsure (confidence 0 against 1)
 */
public record IntervalModel(
    Map<Measure, Double> systematic, double unknownRollDeg, double scaleShare, double doubtFactor) {

  private static final double NINETY_FIVE = 1.96;

  /** Standard deviation of the yaw told from the shoulders, degrees. */
  private static final double YAW_SIGMA_DEG = 5;

  private static final double STEEPEST_YAW_DEG = 60;

  /**
   * What nearness does to an oblique view: knee, hip and rear foot are no longer equally far from
   * the camera. Standard deviation for each unit of the yaw's sine; rough, from one computer-made
   * clip at 25 degrees, whose thigh came out 7 degrees and whose rear knee 7 cm too high.
   */
  private static double obliquely(Measure measure) {
    return switch (measure) {
      case SHIN, TRUNK_LEAN -> 3;
      case THIGH, KNEE_FLEXION, HIP_FLEXION, REAR_KNEE_HEIGHT -> 8;
      case KNEE_PAST_TOE, HIP_TRAVEL, HIP_TRAVEL_LEG -> 2;
      case KNEE_PAST_TOE_FOOT -> 8;
    };
  }

  public IntervalModel {
    systematic = Map.copyOf(systematic);
  }

  public static final IntervalModel DEFAULT =
      new IntervalModel(
          Map.of(
              Measure.SHIN, 1.05,
              Measure.KNEE_PAST_TOE, 1.05,
              Measure.KNEE_PAST_TOE_FOOT, 4.6,
              Measure.TRUNK_LEAN, 1.65,
              Measure.THIGH, 1.75,
              Measure.KNEE_FLEXION, 2.35,
              Measure.HIP_FLEXION, 2.5,
              Measure.REAR_KNEE_HEIGHT, 1.6,
              Measure.HIP_TRAVEL, 1.2,
              Measure.HIP_TRAVEL_LEG, 1.6),
          0.5,
          0.012,
          1.0);

  /** The same for a scale of another source, standard deviation as a share of the length. */
  public IntervalModel scaledTo(double share) {
    return new IntervalModel(systematic, unknownRollDeg, share, doubtFactor);
  }

  /**
   * The same for points of a smaller model, whose errors are about twice as large (from truth
   * clips).
   */
  public IntervalModel coarser() {
    EnumMap<Measure, Double> wider = new EnumMap<>(Measure.class);
    systematic.forEach((measure, sigma) -> wider.put(measure, 1.8 * sigma));
    return new IntervalModel(wider, unknownRollDeg, scaleShare, doubtFactor);
  }

  /**
   * @param rollDeg standard deviation of the vertical, degrees; for measures against the vertical
   * @param jitter standard deviation of the value from the points' jitter, in its own unit
   * @param confidence lowest model confidence of the points used, 0…1
   * @param yawDeg how far off the side view the camera is
   */
  public double plusMinus(
      Measure measure,
      double value,
      double rollDeg,
      double jitter,
      double confidence,
      double yawDeg) {
    double own = systematic.getOrDefault(measure, 1.0) * (1 + doubtFactor * (1 - confidence));
    // A value is divided by the cosine of the yaw, so an error of the yaw moves it by the tangent.
    double tangent = Math.tan(Math.toRadians(Math.min(STEEPEST_YAW_DEG, Math.abs(yawDeg))));
    double yaw =
        Math.abs(value) * tangent * Math.toRadians(YAW_SIGMA_DEG)
            + obliquely(measure) * Math.sin(Math.toRadians(Math.abs(yawDeg)));
    double scale =
        switch (measure) {
          case KNEE_PAST_TOE, REAR_KNEE_HEIGHT, HIP_TRAVEL -> scaleShare * Math.abs(value);
          default -> 0;
        };
    double roll =
        switch (measure) {
          case SHIN, TRUNK_LEAN, THIGH -> rollDeg;
          // Half a leg's height above the toe turns with the picture: 0.5 m by a degree is 0.9 cm.
          case KNEE_PAST_TOE -> rollDeg * 0.8;
          case KNEE_PAST_TOE_FOOT -> rollDeg * 3;
          default -> 0;
        };
    return NINETY_FIVE
        * Math.sqrt(own * own + yaw * yaw + scale * scale + roll * roll + jitter * jitter);
  }
}
