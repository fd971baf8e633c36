package shinline.metrics.analysis;

import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.calibration.Calibration;
import shinline.metrics.calibration.CalibrationKey;
import shinline.metrics.result.SetUp.ScaleSource;
import shinline.metrics.result.Warning;

/**
 * Centimetres a pixel in the athlete's middle plane.
 *
 * @param share standard deviation of the scale, share
 * @param warning what the coach should know of it
 */
record Scale(
    Optional<Double> cmPerPx, ScaleSource source, double share, Optional<Warning> warning) {

  static Scale of(SetRequest.KnownLengths known, Optional<ClipObservations.Disc> seen, Body body) {
    Calibration calibration = body.calibration();
    double staturePx = body.scale().staturePx();
    Optional<Scale> height =
        known
            .athleteHeightM()
            .map(
                m ->
                    new Scale(
                        100 * m / staturePx,
                        ScaleSource.HEIGHT,
                        calibration.value(CalibrationKey.SCALE_HEIGHT)));
    Optional<Scale> disc =
        seen.map(
            d ->
                new Scale(
                    100 * d.diameterM() / d.diameterPx(),
                    ScaleSource.DISC,
                    Math.hypot(calibration.value(CalibrationKey.SCALE_DISC), d.share())));
    if (disc.isPresent()) {
      return height.isPresent()
          ? disc.get().against(height.get(), calibration.value(CalibrationKey.SCALE_DISAGREE))
          : disc.get().plausible(staturePx, calibration);
    }
    if (height.isPresent()) {
      return height.get();
    }
    OptionalDouble bench = body.benchRise();
    if (known.benchHeightM().isPresent() && bench.isPresent()) {
      return new Scale(
          100 * known.benchHeightM().get() / bench.getAsDouble(),
          ScaleSource.BENCH,
          calibration.value(CalibrationKey.SCALE_BENCH));
    }
    return new Scale(Optional.empty(), ScaleSource.NONE, 0, Optional.empty());
  }

  OptionalDouble metresPerPx() {
    return cmPerPx.isPresent() ? OptionalDouble.of(cmPerPx.get() / 100) : OptionalDouble.empty();
  }

  private Scale(double cmPerPx, ScaleSource source, double share) {
    this(Optional.of(cmPerPx), source, share, Optional.empty());
  }

  /** A disc nearer the camera than the athlete looks larger, and makes the athlete small. */
  private Scale against(Scale height, double mostShare) {
    double ratio = height.cm() / cm();
    if (Math.abs(ratio - 1) <= mostShare) {
      return this;
    }
    return height.warned(
        new Warning.DiscDisagrees(
            Math.abs(1 / ratio - 1),
            ratio > 1 ? Warning.DiscPlace.NEARER : Warning.DiscPlace.FARTHER));
  }

  private Scale plausible(double staturePx, Calibration calibration) {
    double statureCm = staturePx * cm();
    return statureCm >= calibration.value(CalibrationKey.SCALE_SHORTEST)
            && statureCm <= calibration.value(CalibrationKey.SCALE_TALLEST)
        ? this
        : warned(new Warning.UnusualStature(statureCm));
  }

  private double cm() {
    return cmPerPx.orElseThrow();
  }

  private Scale warned(Warning why) {
    return new Scale(cmPerPx, source, share, Optional.of(why));
  }
}
