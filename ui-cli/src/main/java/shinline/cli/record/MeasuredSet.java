package shinline.cli.record;

import java.util.Map;
import java.util.Optional;

/**
 * What a clip showed of a set, besides its counts.
 *
 * @param sha256 digest of the clip
 * @param version of the program that measured it
 * @param atBottom by the name of the measure in the result format
 * @param loweringS mean over the reps, seconds
 * @param holdS mean over the reps, seconds
 * @param driveSpeedMps mean over the reps, m/s
 * @param barSpeedMps mean over the reps, m/s
 * @param plusMinus mean ± of the four numbers above, by their names on the line
 * @param reps what each rep showed, by its number and then by the name of the measure or number
 */
public record MeasuredSet(
    Optional<String> sha256,
    Optional<String> version,
    Map<String, BottomMean> atBottom,
    Optional<Double> loweringS,
    Optional<Double> holdS,
    Optional<Double> driveSpeedMps,
    Optional<Double> barSpeedMps,
    Map<String, Double> plusMinus,
    Map<Integer, Map<String, Double>> reps) {

  /**
   * Mean of a measure at the bottom over the reps.
   *
   * @param plusMinusWithin the same without the body's own bias
   */
  public record BottomMean(
      double mean, Optional<Double> plusMinus, Optional<Double> plusMinusWithin) {}

  public MeasuredSet {
    atBottom = Map.copyOf(atBottom);
    plusMinus = Map.copyOf(plusMinus);
    reps = Map.copyOf(reps);
  }

  /** A set counted by eye. */
  public static MeasuredSet nothing() {
    return new MeasuredSet(
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Map.of(),
        Map.of());
  }
}
