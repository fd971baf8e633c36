package shinline.vision.observation;

import java.util.Optional;

/**
 * Tells, while a clip is being read, that the hips have turned: they came down from a top, or up
 * from a bottom. Only to choose frames worth keeping; what a repetition is, is told later by
 * others.
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
  private double highestRowPx = Double.POSITIVE_INFINITY;
  private double lowestRowPx = Double.NEGATIVE_INFINITY;

  /**
   * Takes the next sampled frame.
   *
   * @param hipRowPx row of the hips, pixels from the top of the picture, down
   * @param regionPx side of the square around the body, pixels
   * @return the turn that is now sure; empty at any other frame
   */
  Optional<Turn> add(double hipRowPx, double regionPx) {
    highestRowPx = Math.min(highestRowPx, hipRowPx);
    lowestRowPx = Math.max(lowestRowPx, hipRowPx);
    if (way != Way.DOWN && hipRowPx > highestRowPx + BACK * regionPx) {
      way = Way.DOWN;
      lowestRowPx = hipRowPx;
      return Optional.of(Turn.TOP);
    }
    if (way != Way.UP && hipRowPx < lowestRowPx - BACK * regionPx) {
      way = Way.UP;
      highestRowPx = hipRowPx;
      return Optional.of(Turn.BOTTOM);
    }
    return Optional.empty();
  }
}
