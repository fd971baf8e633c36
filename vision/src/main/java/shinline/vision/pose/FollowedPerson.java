package shinline.vision.pose;

import java.util.List;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * One person led from frame to frame: each frame's region comes from the last frame's auxiliary
 * points, smoothed. A pose that no body can have is looked at again ({@link SecondLook}); where
 * that helps, the upright square is kept for a while, so that trouble which lasts costs no second
 * look a frame; where it does not, it is tried less often.
 */
final class FollowedPerson {
  /**
   * An upright square is kept at least this long, and twice as long each time it is needed again.
   */
  private static final double FIRST_UPRIGHT_S = 1;

  private static final double LONGEST_UPRIGHT_S = 600;

  /** Needed again so soon, it is needed longer. */
  private static final double AGAIN_S = 1;

  /**
   * Second looks that do not help use up a credit, those that do add to it, and it grows by a
   * little with every look: on a clip in which they never help they cost a few looks in a hundred.
   */
  private static final double MOST_CREDIT = 3;

  private static final double CREDIT_A_LOOK = 0.02;

  /** Where only a segment's length is wrong, so many other ways to look are tried. */
  private static final int WAYS_FOR_A_LENGTH = 2;

  /** So many looks that all contradict the own lengths contradict them rightly. */
  private static final int LENGTHS_FORGOTTEN_AFTER = 12;

  /** So many looks in a row that no body can have, and the person is lost. */
  private static final int LOST_AFTER = 8;

  /** Beyond this turn a detection is of somebody lying or upside down, radians. */
  private static final double NOT_UPRIGHT = Math.PI / 3;

  /** The circle around a body reaches this far from the hips, share of stature. */
  private static final double CIRCLE_OF_STATURE = 0.55;

  /** Where a disc passed for the hips and the feet for the far end, the circle reaches farther. */
  private static final double UPSIDE_DOWN_OF_STATURE = 0.9;

  /** And the hips are this share of the way from there to the far end. */
  private static final double HIPS_BETWEEN = 0.45;

  private final LandmarkLook landmarks;
  private final PoseGate gate;
  private final OwnLengths own = new OwnLengths();

  private RegionFilter filter = new RegionFilter();
  private Optional<RegionOfInterest> next = Optional.empty();

  /** What was to be {@link #next} before the last look. */
  private Optional<RegionOfInterest> led = Optional.empty();

  private double ledS;
  private double nextS;

  private Optional<BodyPose> last = Optional.empty();
  private Optional<SecondLook> upright = Optional.empty();
  private double uprightUntilS = Double.NEGATIVE_INFINITY;
  private double uprightForS = FIRST_UPRIGHT_S;
  private int looks;

  /** Frames between the last two looks that were looked at since. */
  private int between;

  private double credit = MOST_CREDIT;
  private int contradictions;
  private int upsideDown;

  FollowedPerson(LandmarkLook landmarks, PoseGate gate) {
    this.landmarks = landmarks;
    this.gate = gate;
  }

  /** A pass with what speaks against it. */
  private record Judged(
      LandmarkLook.Pass pass, PoseGate.Finding finding, Optional<SecondLook> way) {
    boolean betterThan(Judged other) {
      return finding.betterThan(other.finding);
    }
  }

  /** Whether there is somebody to follow into the next frame. */
  boolean followed() {
    return next.isPresent();
  }

  /** The last believed pose. */
  Optional<BodyPose> last() {
    return last;
  }

  /** Standing height, pixels: by the own lengths, or by the last pose. */
  double staturePx() {
    return own.staturePx().orElse(last.map(BodyPose::staturePx).orElse(1.0));
  }

  /** Follows nobody any more. */
  void letGo() {
    next = Optional.empty();
    led = Optional.empty();
  }

  /** Goes on where another path has begun, with the lengths known here. */
  void takeOver(FollowedPerson begun) {
    filter = begun.filter;
    next = begun.next;
    led = begun.led;
    ledS = begun.ledS;
    nextS = begun.nextS;
    last = begun.last;
    upright = begun.upright;
    uprightUntilS = begun.uprightUntilS;
    looks = begun.looks;
    credit = MOST_CREDIT;
  }

  /** The pose in the next frame; not to be called when nobody is followed. */
  PoseSighting look(Mat frame, double timeS) {
    looks++;
    between = 0;
    RegionOfInterest ahead = ahead(timeS);
    led = next;
    ledS = nextS;
    Judged first = judged(frame, ahead, handedness(), upright);
    Judged best = first;
    if (!best.finding().good() && last.isPresent() && mayLookAgain(best)) {
      BodyPose before = last.get();
      best = lookAgain(frame, best, before.hipX(), before.hipY(), staturePx());
      credit += best.finding().good() ? 1 : -1;
    }
    credit = Math.min(MOST_CREDIT, credit + CREDIT_A_LOOK);
    keepUpright(first, best, timeS);
    return accept(best, timeS);
  }

  /**
   * Where the person is by now. A region about the place of the last look draws the points back to
   * it, the more the longer ago that was: quick movement would come out too slow.
   */
  private RegionOfInterest ahead(double timeS) {
    RegionOfInterest here = next.orElseThrow();
    if (led.isEmpty() || !(nextS > ledS)) {
      return here;
    }
    double share = Math.min(1, (timeS - nextS) / (nextS - ledS));
    return here.movedOn(led.get(), share);
  }

  /**
   * The pose in a frame between the last two looks. It leads nothing, and is looked for in one
   * region only: there are two looks beside it.
   *
   * @param share of the time from the one to the other, 0…1
   * @return empty when something speaks against what is seen there
   */
  Optional<PoseSighting> between(Mat frame, double share) {
    if (led.isEmpty() || next.isEmpty()) {
      return Optional.empty();
    }
    between++;
    // As in a row of looks each is of the other kind than the one before.
    ImageFlip handedness = between % 2 == 1 ? handedness() : handedness().other();
    // Each look's own region comes from the look before; those that came of the two lie about them.
    RegionOfInterest region = RegionOfInterest.between(led.get(), next.get(), share);
    Judged judged = judged(frame, region, handedness, upright);
    return judged.finding().good() ? Optional.of(judged.pass().pose()) : Optional.empty();
  }

  /** How much is done to make out somebody who was detected. */
  enum Effort {
    /** The detected region only: there is somebody else already. */
    ONE_REGION,
    /** Others as well. */
    SEVERAL_REGIONS
  }

  /** Starts with somebody who was detected. */
  PoseSighting begin(Mat frame, DetectedPerson person, double timeS, Effort effort) {
    filter = new RegionFilter();
    looks = 0;
    led = Optional.empty();
    last = Optional.empty();
    endUpright();
    Judged first = judged(frame, person.region(), ImageFlip.AS_FILMED, Optional.empty());
    Judged best = first;
    if (best.finding().seen()) {
      // A detector's region is rough; the pose found in it tells a better one.
      best = judged(frame, best.pass().circle().region(), ImageFlip.AS_FILMED, Optional.empty());
    }
    if (!best.finding().good() && effort == Effort.SEVERAL_REGIONS) {
      Judged second = lookAgain(frame, best, person.region());
      if (second != best && second.finding().uprightBody()) {
        // The place was a guess; from the pose it is known.
        BodyPose pose = new BodyPose(second.pass().pose());
        best = lookAgain(frame, second, pose.hipX(), pose.hipY(), pose.staturePx());
      }
    }
    keepUpright(first, best, timeS);
    return accept(best, timeS);
  }

  /** Where the hips would be if the person detected were upright. */
  private Judged lookAgain(Mat frame, Judged first, RegionOfInterest detected) {
    double turn = detected.rotationRad();
    double radius = detected.circleRadiusPx();
    boolean turned = Math.abs(turn) > NOT_UPRIGHT;
    double along = turned ? HIPS_BETWEEN * radius : 0;
    return lookAgain(
        frame,
        first,
        detected.centreX() + along * Math.sin(turn),
        detected.centreY() - along * Math.cos(turn),
        radius / (turned ? UPSIDE_DOWN_OF_STATURE : CIRCLE_OF_STATURE));
  }

  private Judged lookAgain(Mat frame, Judged first, double hipX, double hipY, double staturePx) {
    Judged best = first;
    int ways =
        first.finding().seen() && first.finding().uprightBody()
            ? WAYS_FOR_A_LENGTH
            : SecondLook.values().length;
    for (SecondLook way : List.of(SecondLook.values()).subList(0, ways)) {
      RegionOfInterest region = way.circle(hipX, hipY, staturePx).region();
      Judged other = judged(frame, region, way.handedness(), Optional.of(way));
      if (other.betterThan(best)) {
        best = other;
      }
      if (best.finding().good()) {
        break;
      }
    }
    return best;
  }

  private Judged judged(
      Mat frame, RegionOfInterest region, ImageFlip handedness, Optional<SecondLook> way) {
    LandmarkLook.Pass pass = landmarks.run(frame, region, handedness);
    return new Judged(pass, gate.judge(pass.pose(), own, last), way);
  }

  private boolean mayLookAgain(Judged led) {
    return credit >= 1 || !led.finding().uprightBody();
  }

  /**
   * Every second look is at the mirror image. Where the model cannot tell the legs apart it answers
   * with places between them, and the mirrored look is seldom at a loss in the same moment, so that
   * a look nearby fills in; it also halves what the model gets wrong for one side only.
   */
  private ImageFlip handedness() {
    return looks % 2 == 1 ? ImageFlip.MIRRORED : ImageFlip.AS_FILMED;
  }

  private PoseSighting accept(Judged judged, double timeS) {
    if (!judged.finding().seen()) {
      next = Optional.empty();
      return new PoseSighting.NobodyFound(PoseSighting.Reason.NO_POSE_IN_REGION);
    }
    BodyPose pose = new BodyPose(judged.pass().pose());
    if (judged.finding().good()) {
      own.add(pose);
      contradictions = 0;
    } else if (++contradictions >= LENGTHS_FORGOTTEN_AFTER) {
      own.clear();
      contradictions = 0;
    }
    if (!judged.finding().uprightBody()) {
      // Its circle would lead the next look astray, too; the last region is as good as any, until
      // the detector has to find the person anew.
      if (++upsideDown >= LOST_AFTER) {
        next = Optional.empty();
      }
      return new PoseSighting.NobodyFound(PoseSighting.Reason.NO_BODY_CAN_BE_SO);
    }
    upsideDown = 0;
    last = Optional.of(pose);
    BodyCircle circle =
        upright
            .map(way -> way.circle(pose.hipX(), pose.hipY(), staturePx()))
            .orElse(judged.pass().circle());
    next = Optional.of(filter.next(circle, timeS));
    nextS = timeS;
    return judged.pass().pose();
  }

  /**
   * Begins, goes on or ends the time in which the upright square leads. Only a body upside down
   * begins it: where a leg is misplaced once, the led square is the better one for the next frame,
   * above all when the trunk leans far.
   */
  private void keepUpright(Judged first, Judged best, double timeS) {
    if (best.way().isPresent() && !first.finding().uprightBody() && best.finding().uprightBody()) {
      boolean again = timeS - uprightUntilS <= AGAIN_S;
      uprightForS = again ? Math.min(LONGEST_UPRIGHT_S, 2 * uprightForS) : FIRST_UPRIGHT_S;
      uprightUntilS = timeS + uprightForS;
      upright = best.way();
      filter = new RegionFilter();
      led = Optional.empty();
    } else if (upright.isPresent() && timeS >= uprightUntilS) {
      upright = Optional.empty();
      filter = new RegionFilter();
      led = Optional.empty();
    }
  }

  private void endUpright() {
    upright = Optional.empty();
    uprightUntilS = Double.NEGATIVE_INFINITY;
  }
}
