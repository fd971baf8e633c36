package shinline.vision.observation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PoseSighting;
import shinline.vision.pose.RegionOfInterest;
import shinline.vision.scene.PersonBox;

/** What a pose as a whole tells of the picture, so that nobody else reads single keypoints. */
public final class PoseShape {
  /** Landmarks are joints: hands, hair and shoes reach farther, share of the body's box. */
  private static final double MARGIN = 0.12;

  /** Half a head, a hand's load, a shoe around their landmarks: share of the body's longer side. */
  private static final double PART_MARGIN = 0.07;

  private static final Set<BodyLandmark> WHOLE = EnumSet.allOf(BodyLandmark.class);

  private static final List<Set<BodyLandmark>> PARTS =
      List.of(
          EnumSet.range(BodyLandmark.NOSE, BodyLandmark.RIGHT_SHOULDER),
          EnumSet.of(
              BodyLandmark.LEFT_SHOULDER,
              BodyLandmark.RIGHT_SHOULDER,
              BodyLandmark.LEFT_HIP,
              BodyLandmark.RIGHT_HIP),
          EnumSet.range(BodyLandmark.LEFT_SHOULDER, BodyLandmark.RIGHT_THUMB),
          EnumSet.of(BodyLandmark.LEFT_HIP, BodyLandmark.LEFT_KNEE),
          EnumSet.of(BodyLandmark.RIGHT_HIP, BodyLandmark.RIGHT_KNEE),
          EnumSet.of(
              BodyLandmark.LEFT_KNEE,
              BodyLandmark.LEFT_ANKLE,
              BodyLandmark.LEFT_HEEL,
              BodyLandmark.LEFT_FOOT_INDEX),
          EnumSet.of(
              BodyLandmark.RIGHT_KNEE,
              BodyLandmark.RIGHT_ANKLE,
              BodyLandmark.RIGHT_HEEL,
              BodyLandmark.RIGHT_FOOT_INDEX));

  private PoseShape() {}

  /** The rectangle around whoever was seen; empty when nobody was. */
  public static Optional<PersonBox> box(PoseSighting sighting) {
    return sighting.fold(found -> Optional.of(box(found)), nobody -> Optional.empty());
  }

  /** The rectangle that holds the whole body, with a margin. */
  public static PersonBox box(PoseSighting.Found found) {
    Extent whole = Extent.of(found, WHOLE);
    return whole.grown(MARGIN * whole.longerSide());
  }

  /**
   * A rectangle for each part of the body, with a margin: much smaller together than the one around
   * all, in which a split stance hides most of the room behind it.
   */
  public static List<PersonBox> parts(PoseSighting.Found found) {
    double margin = PART_MARGIN * Extent.of(found, WHOLE).longerSide();
    return PARTS.stream().map(part -> Extent.of(found, part).grown(margin)).toList();
  }

  /** Rectangles that cover everybody in view, followed or not. */
  public static List<PersonBox> boxes(PeopleInView people) {
    List<PersonBox> boxes = new ArrayList<>();
    people.poses().forEach(pose -> boxes.addAll(parts(pose)));
    for (RegionOfInterest region : people.bystanders()) {
      double side = region.sizePx();
      boxes.add(
          new PersonBox(region.centreX() - side / 4, region.centreY() - side / 2, side / 2, side));
    }
    return boxes;
  }

  /** The smallest rectangle around some landmarks, pixels. */
  private record Extent(double left, double top, double right, double bottom) {
    static Extent of(PoseSighting.Found found, Set<BodyLandmark> landmarks) {
      double left = Double.POSITIVE_INFINITY;
      double top = Double.POSITIVE_INFINITY;
      double right = Double.NEGATIVE_INFINITY;
      double bottom = Double.NEGATIVE_INFINITY;
      for (BodyLandmark landmark : landmarks) {
        Keypoint k = found.at(landmark);
        left = Math.min(left, k.x());
        right = Math.max(right, k.x());
        top = Math.min(top, k.y());
        bottom = Math.max(bottom, k.y());
      }
      return new Extent(left, top, right, bottom);
    }

    double longerSide() {
      return Math.max(1, Math.max(right - left, bottom - top));
    }

    PersonBox grown(double margin) {
      return new PersonBox(
          left - margin, top - margin, right - left + 2 * margin, bottom - top + 2 * margin);
    }
  }

  /** The row of the picture in which mid-hip is, pixels from the top, down. */
  public static double hipRowPx(PoseSighting.Found found) {
    return (found.at(BodyLandmark.LEFT_HIP).y() + found.at(BodyLandmark.RIGHT_HIP).y()) / 2;
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
