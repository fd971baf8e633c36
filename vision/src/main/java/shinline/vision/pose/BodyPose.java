package shinline.vision.pose;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The few points of a pose from which its size and its stance are told; pixels of the frame, y
 * down.
 */
record BodyPose(PoseSighting.Found found) {

  /** Share of the standing height that thigh and shank are between the model's own landmarks. */
  private static final double LEG_OF_STATURE =
      BodySegment.THIGH.ofStature() + BodySegment.SHANK.ofStature();

  /** Hair, shoes and clothes reach this much beyond the landmarks, share of stature. */
  private static final double PATCH_MARGIN = 0.07;

  private static final List<Set<BodyLandmark>> COVERED =
      List.of(
          BodyLandmark.HEAD,
          BodyLandmark.TRUNK,
          EnumSet.range(BodyLandmark.LEFT_HIP, BodyLandmark.RIGHT_FOOT_INDEX));

  double hipX() {
    return middle(at(BodyLandmark.LEFT_HIP).x(), at(BodyLandmark.RIGHT_HIP).x());
  }

  double hipY() {
    return middle(at(BodyLandmark.LEFT_HIP).y(), at(BodyLandmark.RIGHT_HIP).y());
  }

  double shoulderX() {
    return middle(at(BodyLandmark.LEFT_SHOULDER).x(), at(BodyLandmark.RIGHT_SHOULDER).x());
  }

  double shoulderY() {
    return middle(at(BodyLandmark.LEFT_SHOULDER).y(), at(BodyLandmark.RIGHT_SHOULDER).y());
  }

  /** Row of the higher knee. */
  double higherKneeY() {
    return Math.min(at(BodyLandmark.LEFT_KNEE).y(), at(BodyLandmark.RIGHT_KNEE).y());
  }

  /** Row of the lower ankle. */
  double lowerAnkleY() {
    return Math.max(at(BodyLandmark.LEFT_ANKLE).y(), at(BodyLandmark.RIGHT_ANKLE).y());
  }

  /** How far the ankles lie apart along the picture, pixels. */
  double feetApartPx() {
    return Math.abs(at(BodyLandmark.LEFT_ANKLE).x() - at(BodyLandmark.RIGHT_ANKLE).x());
  }

  /** Length on one side, pixels; the trunk's is the same for both. */
  double length(BodySegment segment, BodySide side) {
    return switch (segment) {
      case TRUNK -> Math.hypot(shoulderX() - hipX(), shoulderY() - hipY());
      case THIGH -> distance(side.hip(), side.knee());
      case SHANK -> distance(side.knee(), side.ankle());
    };
  }

  /** Standing height by the longer-looking leg, pixels: a leg seen end-on looks short. */
  double staturePx() {
    double longest = 0;
    for (BodySide side : BodySide.values()) {
      longest =
          Math.max(longest, length(BodySegment.THIGH, side) + length(BodySegment.SHANK, side));
    }
    return Math.max(1, longest / LEG_OF_STATURE);
  }

  /**
   * How far the hips or the shoulders, whichever are farther, lie from where they were heading.
   *
   * @param before a look earlier than {@code last}
   * @param last the look before this one
   * @param pace time from {@code last} to here over the time from {@code before} to {@code last}
   */
  double strayPx(BodyPose before, BodyPose last, double pace) {
    double hips =
        Math.hypot(
            stray(hipX(), last.hipX(), before.hipX(), pace),
            stray(hipY(), last.hipY(), before.hipY(), pace));
    double shoulders =
        Math.hypot(
            stray(shoulderX(), last.shoulderX(), before.shoulderX(), pace),
            stray(shoulderY(), last.shoulderY(), before.shoulderY(), pace));
    return Math.max(hips, shoulders);
  }

  private static double stray(double here, double last, double before, double pace) {
    return here - (last + pace * (last - before));
  }

  /** Rectangles that together cover head, trunk and legs. */
  List<Patch> patches() {
    double margin = PATCH_MARGIN * staturePx();
    return COVERED.stream().map(part -> Patch.around(found, part).grown(margin)).toList();
  }

  /** How well the model says it sees knees and ankles, 0…1, mean. */
  double legVisibility() {
    double sum = 0;
    for (BodySide side : BodySide.values()) {
      sum += at(side.knee()).visibility() + at(side.ankle()).visibility();
    }
    return sum / 4;
  }

  private Keypoint at(BodyLandmark landmark) {
    return found.at(landmark);
  }

  private double distance(BodyLandmark from, BodyLandmark to) {
    return Math.hypot(at(from).x() - at(to).x(), at(from).y() - at(to).y());
  }

  private static double middle(double a, double b) {
    return (a + b) / 2;
  }
}
