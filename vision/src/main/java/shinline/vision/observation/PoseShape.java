package shinline.vision.observation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import shinline.vision.pose.BodyLandmark;
import shinline.vision.pose.Keypoint;
import shinline.vision.pose.Patch;
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
          BodyLandmark.HEAD,
          BodyLandmark.TRUNK,
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
    Patch whole = Patch.around(found, WHOLE);
    return grown(whole, MARGIN * longerSide(whole));
  }

  /**
   * A rectangle for each part of the body, with a margin: much smaller together than the one around
   * all, in which a split stance hides most of the room behind it.
   */
  public static List<PersonBox> parts(PoseSighting.Found found) {
    double margin = PART_MARGIN * longerSide(Patch.around(found, WHOLE));
    return PARTS.stream().map(part -> grown(Patch.around(found, part), margin)).toList();
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

  private static double longerSide(Patch patch) {
    return Math.max(1, Math.max(patch.right() - patch.left(), patch.bottom() - patch.top()));
  }

  private static PersonBox grown(Patch patch, double margin) {
    return new PersonBox(
        patch.left() - margin,
        patch.top() - margin,
        patch.right() - patch.left() + 2 * margin,
        patch.bottom() - patch.top() + 2 * margin);
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
