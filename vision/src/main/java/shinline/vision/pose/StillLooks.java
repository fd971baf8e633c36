package shinline.vision.pose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;

/**
 * Looks at one still picture in many ways: a few looks as at a clip that stands still, which find
 * the people and settle on a region, and then at that region a little larger, smaller, moved and
 * turned, as filmed and mirrored. None of that moves the athlete, so what the answers differ by is
 * what the model does not know.
 */
public final class StillLooks {
  /** Looks in which regions settle and poses that no body can have are looked at again. */
  private static final int SETTLING = 4;

  /** Of a clip: what is nominal here is real there. */
  private static final double STEP_S = 1.0 / 15;

  /** How the region is changed, each as filmed and mirrored; own choice of small changes. */
  private static final List<Change> CHANGES =
      List.of(
          new Change(1, 0, 0, 0),
          new Change(0.93, 0, 0, 0),
          new Change(1.08, 0, 0, 0),
          new Change(1, 0.025, 0, 0),
          new Change(1, -0.025, 0, 0),
          new Change(1, 0, 0.025, 0),
          new Change(1, 0, -0.025, 0),
          new Change(1, 0, 0, 5),
          new Change(1, 0, 0, -5));

  private final PoseEstimator pose;

  /**
   * @param pose forgets whom it followed
   */
  public StillLooks(PoseEstimator pose) {
    this.pose = pose;
  }

  /**
   * What was seen.
   *
   * @param looks at the athlete; empty when nobody is in view
   * @param company others, or what looks like them
   */
  public record Seen(List<PoseSighting> looks, Company company) {
    public Seen {
      looks = List.copyOf(looks);
    }
  }

  /** Who else is there. */
  public enum Company {
    NOBODY,
    OTHERS
  }

  /**
   * @param size times the settled region's
   * @param across to the right, share of its side
   * @param down share of its side
   * @param turnDeg clockwise
   */
  private record Change(double size, double across, double down, double turnDeg) {
    RegionOfInterest of(RegionOfInterest region) {
      return new RegionOfInterest(
          region.frameX(0.5 + across, 0.5 + down),
          region.frameY(0.5 + across, 0.5 + down),
          size * region.sizePx(),
          region.rotationRad() + Math.toRadians(turnDeg));
    }
  }

  /** Looks at a picture. */
  public Seen at(Mat bgrUpright) {
    pose.beginAnew();
    PeopleInView people = pose.look(bgrUpright, 0);
    for (int i = 1; i < SETTLING; i++) {
      people = pose.look(bgrUpright, i * STEP_S);
    }
    Optional<PoseSighting.Found> athlete = athlete(people);
    List<PoseSighting> looks = new ArrayList<>();
    for (PoseSighting.Found found : athlete.stream().toList()) {
      for (Change change : CHANGES) {
        for (ImageFlip flip : ImageFlip.values()) {
          looks.add(believed(pose.at(bgrUpright, change.of(found.region()), flip)));
        }
      }
    }
    return new Seen(looks, people.people().size() > 1 ? Company.OTHERS : Company.NOBODY);
  }

  /** Whatever the flag says, a look at a given region gives a pose. */
  private static PoseSighting believed(PoseSighting.Found found) {
    return found.poseFlag() >= PoseGate.LEAST_POSE_FLAG
        ? found
        : new PoseSighting.NobodyFound(PoseSighting.Reason.NO_POSE_IN_REGION);
  }

  /**
   * Nobody moves in a picture: of several people it is the one whose feet are farthest apart and
   * whose hips are lowest over them.
   */
  private static Optional<PoseSighting.Found> athlete(PeopleInView people) {
    return people.people().entrySet().stream()
        .flatMap(entry -> found(entry).stream())
        .max(Comparator.comparingDouble(f -> split(new BodyPose(f))));
  }

  private static Optional<PoseSighting.Found> found(Map.Entry<Integer, PoseSighting> entry) {
    return entry.getValue().fold(Optional::of, nobody -> Optional.empty());
  }

  private static double split(BodyPose body) {
    return (body.feetApartPx() - (body.lowerAnkleY() - body.hipY())) / body.staturePx();
  }
}
