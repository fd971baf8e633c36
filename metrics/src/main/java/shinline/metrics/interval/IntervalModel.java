package shinline.metrics.interval;

import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.result.Measure;

/**
 * From what was seen to a ±: half width of the interval that holds the true value 95 times in 100.
 *
 * <p>Variances of independent causes add up: what the model and the correction get wrong from
 * athlete to athlete (from clips left out of the fit, {@link #body}), an unknown roll of the camera
 * (1:1 on angles to the vertical), the view off the side (small angles and lengths shrink by cos
 * yaw), the scale, the jitter of the points in this very clip (σ ≈ √2·σ_px / L_px), and how sure
 * the model was of them.
 *
 * @param calibration tells the deviations of a pose model's points
 * @param scaleShare standard deviation of the scale, share of the length
 */
public record IntervalModel(Calibration calibration, double scaleShare) {

  /** A half width of 95 % in standard deviations. */
  public static final double NINETY_FIVE = 1.96;

  /** What the model and the offsets get wrong from athlete to athlete. */
  public static CalibrationKey body(Measure measure) {
    return switch (measure) {
      case SHIN -> CalibrationKey.INTERVAL_SHIN_BODY;
      case KNEE_PAST_TOE -> CalibrationKey.INTERVAL_KNEE_PAST_TOE_BODY;
      case KNEE_PAST_TOE_FOOT -> CalibrationKey.INTERVAL_KNEE_PAST_TOE_FOOT_BODY;
      case TRUNK_LEAN -> CalibrationKey.INTERVAL_TRUNK_LEAN_BODY;
      case THIGH -> CalibrationKey.INTERVAL_THIGH_BODY;
      case KNEE_FLEXION -> CalibrationKey.INTERVAL_KNEE_FLEXION_BODY;
      case HIP_FLEXION -> CalibrationKey.INTERVAL_HIP_FLEXION_BODY;
      case REAR_KNEE_HEIGHT -> CalibrationKey.INTERVAL_REAR_KNEE_HEIGHT_BODY;
      case HIP_TRAVEL -> CalibrationKey.INTERVAL_HIP_TRAVEL_BODY;
      case HIP_TRAVEL_LEG -> CalibrationKey.INTERVAL_HIP_TRAVEL_LEG_BODY;
    };
  }

  /**
   * What nearness does to an oblique view: knee, hip and rear foot are no longer equally far from
   * the camera. For each unit of the yaw's sine.
   */
  private static CalibrationKey oblique(Measure measure) {
    return switch (measure) {
      case SHIN -> CalibrationKey.INTERVAL_SHIN_OBLIQUE;
      case KNEE_PAST_TOE -> CalibrationKey.INTERVAL_KNEE_PAST_TOE_OBLIQUE;
      case KNEE_PAST_TOE_FOOT -> CalibrationKey.INTERVAL_KNEE_PAST_TOE_FOOT_OBLIQUE;
      case TRUNK_LEAN -> CalibrationKey.INTERVAL_TRUNK_LEAN_OBLIQUE;
      case THIGH -> CalibrationKey.INTERVAL_THIGH_OBLIQUE;
      case KNEE_FLEXION -> CalibrationKey.INTERVAL_KNEE_FLEXION_OBLIQUE;
      case HIP_FLEXION -> CalibrationKey.INTERVAL_HIP_FLEXION_OBLIQUE;
      case REAR_KNEE_HEIGHT -> CalibrationKey.INTERVAL_REAR_KNEE_HEIGHT_OBLIQUE;
      case HIP_TRAVEL -> CalibrationKey.INTERVAL_HIP_TRAVEL_OBLIQUE;
      case HIP_TRAVEL_LEG -> CalibrationKey.INTERVAL_HIP_TRAVEL_LEG_OBLIQUE;
    };
  }

  /**
   * @param attitudeSigma standard deviation of the value from what is not known of the camera's
   *     attitude, in its own unit
   * @param jitter standard deviation of the value from the points' jitter, in its own unit
   * @param confidence lowest model confidence of the points used, 0…1
   * @param yawDeg how far off the side view the camera is
   */
  public HalfWidths plusMinus(
      Measure measure,
      double value,
      double attitudeSigma,
      double jitter,
      double confidence,
      double yawDeg) {
    double doubt = calibration.value(CalibrationKey.INTERVAL_DOUBT);
    double own = calibration.value(body(measure)) * (1 + doubt * (1 - confidence));
    double fromRepToRep = calibration.value(CalibrationKey.INTERVAL_REP_SHARE) * own;
    double oblique =
        calibration.value(oblique(measure)) * Math.sin(Math.toRadians(Math.abs(yawDeg)));
    double scale =
        switch (measure) {
          case KNEE_PAST_TOE, REAR_KNEE_HEIGHT, HIP_TRAVEL -> scaleShare * Math.abs(value);
          default -> 0;
        };
    double rest =
        oblique * oblique + scale * scale + attitudeSigma * attitudeSigma + jitter * jitter;
    return new HalfWidths(
        NINETY_FIVE * Math.sqrt(own * own + rest),
        NINETY_FIVE * Math.sqrt(fromRepToRep * fromRepToRep + rest));
  }

  /**
   * Half widths of a value's 95 % intervals, in its own unit.
   *
   * @param all of everything that is not known
   * @param within without what one body differs from another by
   */
  public record HalfWidths(double all, double within) {}
}
