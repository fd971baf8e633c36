package shinline.vision.pose;

import java.util.OptionalDouble;

/**
 * What a body cannot do. The pose flag and the visibilities do not tell: a model that turns the
 * body upside down, as where a disc hides head and shoulders, is sure of itself.
 */
final class PoseGate {
  /** A segment off by more than this share of the person's own length is not where it was seen. */
  private static final double OFF_OWN = 0.25;

  /** Before the own lengths are known: off the proportions of a body by more than this share. */
  private static final double OFF_PROPORTIONS = 0.5;

  /** Below this the model itself takes the person for lost. */
  static final double LEAST_POSE_FLAG = 0.5;

  /**
   * Legs of somebody who really is upside down in the picture are seen; where a disc passed for the
   * hips, knees and ankles had a mean visibility below 0.1.
   */
  private static final double SEEN_LEGS = 0.3;

  /** Hips are not carried farther than this share of stature from one look to the next. */
  private static final double FARTHEST_STEP = 0.3;

  private boolean pictureIsUpright;

  /** From now on nobody is believed to stand on the head. */
  void pictureIsUpright() {
    pictureIsUpright = true;
  }

  /**
   * How far a pose is to be believed.
   *
   * @param seen whether the model takes what it sees for a person at all
   * @param uprightBody whether the body is the right way up
   * @param faults segments of a wrong length, and a jump
   */
  record Finding(boolean seen, boolean uprightBody, int faults) {
    /** Nothing speaks against it. */
    boolean good() {
      return seen && uprightBody && faults == 0;
    }

    /** Whether it is to be preferred to another. */
    boolean betterThan(Finding other) {
      return rank() < other.rank();
    }

    private int rank() {
      return (seen ? 0 : 200) + (uprightBody ? 0 : 100) + faults;
    }
  }

  /**
   * Judges one pose.
   *
   * @param own the person's own lengths, as far as they are known
   * @param last the last believed pose, a moment ago; empty when there is none
   */
  Finding judge(PoseSighting.Found found, OwnLengths own, java.util.Optional<BodyPose> last) {
    BodyPose pose = new BodyPose(found);
    int faults = 0;
    for (BodySegment segment : BodySegment.values()) {
      for (BodySide side : BodySide.values()) {
        boolean once = segment == BodySegment.TRUNK && side == BodySide.RIGHT;
        if (!once && wrongLength(pose, segment, side, own)) {
          faults++;
        }
      }
    }
    if (last.isPresent() && jumped(pose, last.get())) {
      faults++;
    }
    return new Finding(found.poseFlag() >= LEAST_POSE_FLAG, rightWayUp(pose), faults);
  }

  private boolean rightWayUp(BodyPose pose) {
    boolean upright =
        pose.shoulderY() < pose.hipY()
            && pose.shoulderY() < pose.higherKneeY()
            && pose.hipY() < pose.lowerAnkleY();
    return upright || (!pictureIsUpright && pose.legVisibility() >= SEEN_LEGS);
  }

  private static boolean wrongLength(
      BodyPose pose, BodySegment segment, BodySide side, OwnLengths own) {
    double length = pose.length(segment, side);
    OptionalDouble known = own.px(segment);
    if (known.isPresent()) {
      return Math.abs(length / known.getAsDouble() - 1) > OFF_OWN;
    }
    double usual = segment.ofStature() * pose.staturePx();
    return Math.abs(length / usual - 1) > OFF_PROPORTIONS;
  }

  private static boolean jumped(BodyPose pose, BodyPose last) {
    return Math.hypot(pose.hipX() - last.hipX(), pose.hipY() - last.hipY())
        > FARTHEST_STEP * last.staturePx();
  }
}
