package shinline.metrics.back;

import java.util.List;
import java.util.Optional;
import shinline.metrics.geometry.Point;
import shinline.metrics.track.Side;

/**
 * Where the trunk ends on either side in one frame: at places along the line from mid-hip to
 * mid-shoulder, the points square to that line at which the person stops. Pixels of the upright
 * picture, y up.
 *
 * @param frame index of the frame in the clip
 * @param timeS seconds from the first frame
 * @param hip mid-hip
 * @param shoulder mid-shoulder
 * @param left the edge toward the picture's left, one for each of {@link #PLACES}; empty where it
 *     was not seen, or an arm lies over it
 * @param right the same toward the picture's right
 */
public record TrunkOutline(
    int frame,
    double timeS,
    Point hip,
    Point shoulder,
    List<Optional<Point>> left,
    List<Optional<Point>> right) {

  /** How many places along the line are looked at. */
  public static final int PLACES = 17;

  /** Above the crease of the buttock. */
  private static final double LOWEST = 0.05;

  /** Below the neck, where hair and hoods hang. */
  private static final double HIGHEST = 0.85;

  public TrunkOutline {
    left = List.copyOf(left);
    right = List.copyOf(right);
    if (left.size() != PLACES || right.size() != PLACES) {
      throw new IllegalArgumentException(
          "an outline has " + PLACES + " places, not " + left.size() + " and " + right.size());
    }
  }

  /**
   * A place's share of the way from hip to shoulder.
   *
   * @param number from 0, the lowest, to {@link #PLACES} − 1
   */
  public static double place(int number) {
    return LOWEST + (HIGHEST - LOWEST) * number / (PLACES - 1);
  }

  /** The edge toward one side of the picture. */
  public List<Optional<Point>> edge(Side toward) {
    return toward == Side.LEFT ? left : right;
  }
}
