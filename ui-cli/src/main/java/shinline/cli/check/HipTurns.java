package shinline.cli.check;

import java.util.Optional;

/**
 * Tells, while a clip is being read, that the hips have turned: they came down from a top, or up
 * from a bottom. Only to choose looks worth keeping; what a rep is, metrics says later.
 */
final class HipTurns {
  /** What the hips have left behind. */
  enum Turn {
    TOP,
    BOTTOM
  }

  /**
   * From an extreme the hips must have come back this far, share of the body's region: about a
   * twentieth of a stature, well above the jitter of the points and below any rep's travel.
   */
  private static final double BACK = 0.035;

  /** Which way the hips are known to go. */
  private enum Way {
    UNKNOWN,
    UP,
    DOWN
  }

  private Way way = Way.UNKNOWN;
  private double highestPx = Double.NEGATIVE_INFINITY;
  private double lowestPx = Double.POSITIVE_INFINITY;

  /**
   * Takes the next look.
   *
   * @param hipPx height of the hips, pixels, + up
   * @param regionPx side of the square around the body, pixels
   * @return the turn that is now sure; empty at any other look
   */
  Optional<Turn> add(double hipPx, double regionPx) {
    highestPx = Math.max(highestPx, hipPx);
    lowestPx = Math.min(lowestPx, hipPx);
    if (way != Way.DOWN && hipPx < highestPx - BACK * regionPx) {
      way = Way.DOWN;
      lowestPx = hipPx;
      return Optional.of(Turn.TOP);
    }
    if (way != Way.UP && hipPx > lowestPx + BACK * regionPx) {
      way = Way.UP;
      highestPx = hipPx;
      return Optional.of(Turn.BOTTOM);
    }
    return Optional.empty();
  }
}
