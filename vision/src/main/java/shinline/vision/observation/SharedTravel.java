package shinline.vision.observation;

import org.hipparchus.stat.regression.SimpleRegression;

/**
 * Whether a disc goes down and up with the hips: the slope and the correlation of its row on
 * theirs.
 */
final class SharedTravel {
  /**
   * Until the hips have gone about so far nothing is told: standard deviation, share of stature. A
   * short-range drive of 0.12 of stature has 0.04; sway and a pose's jitter stay under 0.01.
   */
  private static final double LEAST_SPREAD = 0.025;

  private static final int FEWEST_LOOKS = 12;

  /** A bar goes as far as the hips, times its nearness; what stays goes nowhere. */
  private static final double LEAST_SLOPE = 0.5;

  private static final double MOST_SLOPE = 2.2;
  private static final double STAYS = 0.25;
  private static final double LEAST_CORRELATION = 0.8;

  private final SimpleRegression discOnHip = new SimpleRegression();

  /** The answer so far. */
  enum Told {
    TOO_LITTLE,
    TOGETHER,
    APART
  }

  /** One look: rows of mid-hip and of the disc's centre, pixels. */
  void add(double hipRowPx, double discRowPx) {
    discOnHip.addData(hipRowPx, discRowPx);
  }

  /**
   * @param staturePx the athlete's standing height
   */
  Told tells(double staturePx) {
    long looks = discOnHip.getN();
    if (looks < FEWEST_LOOKS
        || Math.sqrt(discOnHip.getXSumSquares() / looks) < LEAST_SPREAD * staturePx) {
      return Told.TOO_LITTLE;
    }
    double slope = discOnHip.getSlope();
    if (slope < STAYS) {
      return Told.APART;
    }
    boolean close = discOnHip.getR() > LEAST_CORRELATION;
    return close && slope > LEAST_SLOPE && slope < MOST_SLOPE ? Told.TOGETHER : Told.TOO_LITTLE;
  }
}
