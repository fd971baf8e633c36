package shinline.metrics.analysis;

import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.result.SetUp.ScaleSource;

/**
 * Centimetres a pixel in the athlete's middle plane.
 *
 * @param share standard deviation of the scale, share
 */
record Scale(Optional<Double> cmPerPx, ScaleSource source, double share) {

  /** A stated height is good to a centimetre, its segments to a hundredth of stature. */
  private static final double HEIGHT_SHARE = 0.012;

  /** A disc beside the athlete stands in another plane: 0.15 m of 3.6 m. */
  private static final double DISC_SHARE = 0.04;

  /**
   * The rear foot lies on its bench in another plane, and its toe point is not the bench's edge.
   */
  private static final double BENCH_SHARE = 0.06;

  static Scale of(AnalysisOptions options, Body body) {
    if (options.disc().isPresent()) {
      AnalysisOptions.Disc disc = options.disc().get();
      return new Scale(
          Optional.of(100 * disc.diameterM() / disc.diameterPx()), ScaleSource.DISC, DISC_SHARE);
    }
    if (options.athleteHeightM().isPresent()) {
      return new Scale(
          Optional.of(100 * options.athleteHeightM().get() / body.scale().staturePx()),
          ScaleSource.HEIGHT,
          HEIGHT_SHARE);
    }
    OptionalDouble bench = body.benchRise();
    if (options.benchHeightM().isPresent() && bench.isPresent()) {
      return new Scale(
          Optional.of(100 * options.benchHeightM().get() / bench.getAsDouble()),
          ScaleSource.BENCH,
          BENCH_SHARE);
    }
    return new Scale(Optional.empty(), ScaleSource.NONE, 0);
  }
}
