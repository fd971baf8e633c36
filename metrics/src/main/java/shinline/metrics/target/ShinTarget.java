package shinline.metrics.target;

import java.util.function.Function;

/** Where the front shin should be at the bottom. Our own defaults: {@link ShinPreset}. */
public sealed interface ShinTarget {

  String name();

  /** Shin angle from the vertical, + knee ahead of the ankle, degrees. */
  record AngleBand(String name, double minDeg, double maxDeg) implements ShinTarget {
    public AngleBand {
      ordered(minDeg, maxDeg, "deg");
    }
  }

  /** Knee ahead (+) of the toe tip, centimetres; an infinite end is open. */
  record KneePastToeBand(String name, double minCm, double maxCm) implements ShinTarget {
    public KneePastToeBand {
      ordered(minCm, maxCm, "cm");
    }
  }

  default <T> T fold(Function<AngleBand, T> angle, Function<KneePastToeBand, T> distance) {
    return this instanceof AngleBand a ? angle.apply(a) : distance.apply((KneePastToeBand) this);
  }

  private static void ordered(double min, double max, String unit) {
    if (!(min < max)) {
      throw new IllegalArgumentException("band from " + min + " to " + max + " " + unit);
    }
  }
}
