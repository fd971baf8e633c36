package shinline.cli.crossing;

import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.PoseSighting;
import shinline.vision.scene.PersonBox;

/** What a pose as a whole tells of the picture, so that nobody else reads single keypoints. */
public final class PoseShape {
  /** Landmarks are joints: hands, hair and shoes reach farther, share of the body's box. */
  private static final double MARGIN = 0.12;

  private PoseShape() {}

  /** The rectangle that holds the whole body, with a margin. */
  public static PersonBox box(PoseSighting.Found found) {
    double left = Double.POSITIVE_INFINITY;
    double top = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.NEGATIVE_INFINITY;
    for (BodyLandmark landmark : BodyLandmark.values()) {
      Keypoint k = found.at(landmark);
      left = Math.min(left, k.x());
      right = Math.max(right, k.x());
      top = Math.min(top, k.y());
      bottom = Math.max(bottom, k.y());
    }
    double margin = MARGIN * Math.max(1, Math.max(right - left, bottom - top));
    return new PersonBox(
        left - margin, top - margin, right - left + 2 * margin, bottom - top + 2 * margin);
  }

  /**
   * How high the hips are, pixels above the bottom row of the picture.
   *
   * @param heightPx of the upright picture
   */
  public static double hipHeightPx(PoseSighting.Found found, int heightPx) {
    double left = found.at(BodyLandmark.LEFT_HIP).y();
    double right = found.at(BodyLandmark.RIGHT_HIP).y();
    return heightPx - 1 - (left + right) / 2;
  }

  /** Clockwise quarter turns, 0…3, that would bring the shoulders above the ankles. */
  public static int missingQuarterTurns(PoseSighting.Found found) {
    Keypoint ls = found.at(BodyLandmark.LEFT_SHOULDER);
    Keypoint rs = found.at(BodyLandmark.RIGHT_SHOULDER);
    Keypoint la = found.at(BodyLandmark.LEFT_ANKLE);
    Keypoint ra = found.at(BodyLandmark.RIGHT_ANKLE);
    double x = (ls.x() + rs.x()) / 2 - (la.x() + ra.x()) / 2;
    double y = (ls.y() + rs.y()) / 2 - (la.y() + ra.y()) / 2;
    // y is down in the picture: the shoulders of someone upright are at negative y.
    double clockwiseFromUp = Math.toDegrees(Math.atan2(x, -y));
    return (int) Math.floorMod(-Math.round(clockwiseFromUp / 90), 4L);
  }
}
