package shinline.metrics.signal;

import java.util.Locale;
import java.util.function.Function;

/**
 * Which two-pass filter a frame rate allows.
 *
 * <p>A cut-off needs at least four samples in its period, so 6 Hz (the gait convention, Winter
 * 2009) needs 24 frames a second. Below that the cut-off comes down to a quarter of the rate; where
 * less than 3 Hz would be left, that is under 12 frames a second, a quick drive is smoothed away
 * and the filter is refused.
 */
public sealed interface LowPassChoice {

  /** Samples in a cut-off period, at least. */
  double LEAST_SAMPLES_PER_PERIOD = 4;

  /** Lowest useful cut-off for a lift, Hz; the lower bound of the residual analysis too. */
  double LEAST_CUTOFF_HZ = 3;

  /** The asked-for cut-off can be had. */
  record AsAsked(ButterworthLowPass filter) implements LowPassChoice {}

  /** The cut-off was lowered to what the frame rate carries. */
  record Adapted(ButterworthLowPass filter, String reason) implements LowPassChoice {}

  /** The frame rate is too low for any useful cut-off. */
  record Refused(String reason) implements LowPassChoice {}

  /**
   * @param cutoffHz asked-for cut-off, above 0
   * @param rateHz samples a second, above 0
   */
  static LowPassChoice of(double cutoffHz, double rateHz) {
    if (!(cutoffHz > 0) || !(rateHz > 0)) {
      throw new IllegalArgumentException("cut-off " + cutoffHz + " Hz at " + rateHz + " Hz");
    }
    double most = rateHz / LEAST_SAMPLES_PER_PERIOD;
    if (cutoffHz <= most) {
      return new AsAsked(ButterworthLowPass.twoPass(cutoffHz, rateHz));
    }
    if (most < LEAST_CUTOFF_HZ) {
      return new Refused(
          String.format(
              Locale.ROOT,
              "%.1f frames a second are too few to smooth a lift; film at 24 or more",
              rateHz));
    }
    return new Adapted(
        ButterworthLowPass.twoPass(most, rateHz),
        String.format(
            Locale.ROOT,
            "smoothed at %.1f Hz instead of %.1f Hz because the clip has %.1f frames a second",
            most,
            cutoffHz,
            rateHz));
  }

  default <T> T fold(
      Function<AsAsked, T> asAsked, Function<Adapted, T> adapted, Function<Refused, T> refused) {
    if (this instanceof AsAsked a) {
      return asAsked.apply(a);
    }
    return this instanceof Adapted a ? adapted.apply(a) : refused.apply((Refused) this);
  }
}
