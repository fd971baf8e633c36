package shinline.metrics.analysis;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import shinline.metrics.result.SetUp.ScaleSource;

/**
 * Centimetres a pixel in the athlete's middle plane.
 *
 * @param share standard deviation of the scale, share
 * @param warning what the coach should know of it
 */
record Scale(Optional<Double> cmPerPx, ScaleSource source, double share, Optional<String> warning) {

  /** A stated height is good to a centimetre, its segments to a hundredth of stature. */
  private static final double HEIGHT_SHARE = 0.012;

  /** A disc beside the athlete stands in another plane: 0.15 m of 3.6 m. */
  private static final double DISC_SHARE = 0.04;

  /**
   * The rear foot lies on its bench in another plane, and its toe point is not the bench's top: 4 %
   * off the scale by height on five clips with truth, at most 6 %, and 11 % in the dark.
   */
  private static final double BENCH_SHARE = 0.06;

  /** A disc and a height that differ by more than two and a half of their deviations. */
  private static final double DISAGREE = 0.10;

  /** Hardly any athlete is shorter or taller; the disc then stands well before or behind. */
  private static final double SHORTEST_CM = 140;

  private static final double TALLEST_CM = 215;

  static Scale of(SetRequest.KnownLengths known, Optional<ClipObservations.Disc> seen, Body body) {
    double staturePx = body.scale().staturePx();
    Optional<Scale> height =
        known
            .athleteHeightM()
            .map(m -> new Scale(100 * m / staturePx, ScaleSource.HEIGHT, HEIGHT_SHARE));
    Optional<Scale> disc =
        seen.map(
            d ->
                new Scale(
                    100 * d.diameterM() / d.diameterPx(),
                    ScaleSource.DISC,
                    Math.hypot(DISC_SHARE, d.share())));
    if (disc.isPresent()) {
      return height.isPresent()
          ? disc.get().against(height.get())
          : disc.get().plausible(staturePx);
    }
    if (height.isPresent()) {
      return height.get();
    }
    OptionalDouble bench = body.benchRise();
    if (known.benchHeightM().isPresent() && bench.isPresent()) {
      return new Scale(
          100 * known.benchHeightM().get() / bench.getAsDouble(), ScaleSource.BENCH, BENCH_SHARE);
    }
    return new Scale(Optional.empty(), ScaleSource.NONE, 0, Optional.empty());
  }

  private Scale(double cmPerPx, ScaleSource source, double share) {
    this(Optional.of(cmPerPx), source, share, Optional.empty());
  }

  /** A disc nearer the camera than the athlete looks larger, and makes the athlete small. */
  private Scale against(Scale height) {
    double ratio = height.cm() / cm();
    if (Math.abs(ratio - 1) <= DISAGREE) {
      return this;
    }
    return height.warned(
        String.format(
            Locale.ROOT,
            "by the disc everything would be %.0f %% %s than by the athlete's height: the disc is"
                + " %s the camera than the athlete, or not of that size; centimetres come from the"
                + " height",
            100 * Math.abs(1 / ratio - 1),
            ratio > 1 ? "smaller" : "larger",
            ratio > 1 ? "nearer to" : "farther from"));
  }

  private Scale plausible(double staturePx) {
    double statureCm = staturePx * cm();
    return statureCm >= SHORTEST_CM && statureCm <= TALLEST_CM
        ? this
        : warned(
            String.format(
                Locale.ROOT,
                "by the disc the athlete is %.0f cm tall: if that is wrong, the disc is nearer to or"
                    + " farther from the camera than the athlete, or another one was found; every"
                    + " length is wrong by as much",
                statureCm));
  }

  private double cm() {
    return cmPerPx.orElseThrow();
  }

  private Scale warned(String words) {
    return new Scale(cmPerPx, source, share, Optional.of(words));
  }
}
