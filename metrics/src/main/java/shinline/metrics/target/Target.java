package shinline.metrics.target;

import java.util.Optional;

/**
 * What the coach asked for today.
 *
 * @param shin empty when the shin is measured but not judged
 * @param trunk limits on trunk lean at the bottom, degrees; empty when not judged
 * @param margin how far outside a limit a rep is still "near"
 */
public record Target(
    Optional<ShinTarget> shin,
    DepthTarget depth,
    TempoTarget tempo,
    Optional<TrunkBand> trunk,
    Margin margin) {

  /** Trunk lean at the bottom, + forward, degrees. */
  public record TrunkBand(double minDeg, double maxDeg) {
    public TrunkBand {
      if (!(minDeg < maxDeg)) {
        throw new IllegalArgumentException("trunk from " + minDeg + " to " + maxDeg + " deg");
      }
    }
  }

  /** Defaults 3 degrees, 2 cm, 0.3 s (common practice). */
  public record Margin(double deg, double cm, double s) {
    public Margin {
      if (!(deg >= 0 && cm >= 0 && s >= 0)) {
        throw new IllegalArgumentException("margins must not be negative");
      }
    }

    public static Margin standard() {
      return new Margin(3, 2, 0.3);
    }
  }

  /** Nothing asked for: measures and faults only. */
  public static Target none() {
    return new Target(
        Optional.empty(),
        DepthTarget.any(),
        TempoTarget.any(),
        Optional.empty(),
        Margin.standard());
  }

  /**
   * What of it one posture can show: neither tempo, nor travel, nor whether the range was short.
   */
  public Target ofPosture() {
    return new Target(shin, depth.ofPosture(), TempoTarget.any(), trunk, margin);
  }

  /** A shin preset with full depth. */
  public static Target preset(ShinPreset preset) {
    return new Target(
        Optional.of(preset.target()),
        DepthTarget.full(),
        TempoTarget.any(),
        Optional.empty(),
        Margin.standard());
  }
}
