package shinline.metrics.cleaning;

import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.signal.GapFill;
import shinline.metrics.signal.ResidualAnalysis;

/**
 * How a track is cleaned.
 *
 * @param gapFill longest gap that is bridged; a planted or slowly moving joint cannot go far in 0.3
 *     s (own choice)
 * @param outlierFloor an outlier is at least this far off its neighbours, share of stature; below,
 *     the model's own jitter is left to the filter
 * @param leastRateHz rate of the even grid, at least; interpolation adds no detail, but keeps the
 *     filter well inside its range
 * @param cutoff residual analysis that chooses the cut-off between 4 and 6 Hz; 6 Hz is the gait
 *     convention (Winter 2009), a split squat is slower
 */
public record CleaningParameters(
    GapFill gapFill, double outlierFloor, double leastRateHz, ResidualAnalysis cutoff) {
  /** Those for the points of a calibrated pose model. */
  public static CleaningParameters of(Calibration calibration) {
    return new CleaningParameters(
        new GapFill(0.35),
        calibration.value(CalibrationKey.CLEANING_OUTLIER),
        30,
        new ResidualAnalysis(0.25, 0.4, 0.65, 4, 6));
  }

  public CleaningParameters {
    if (!(outlierFloor >= 0 && leastRateHz > 0)) {
      throw new IllegalArgumentException("cleaning parameters out of range");
    }
  }
}
