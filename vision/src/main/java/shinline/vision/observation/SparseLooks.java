package shinline.vision.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.vision.clip.Frame;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PoseEstimator;

/**
 * Has the pose model look at sampled frames that lie apart, and at those between only where
 * somebody changed pace: a body that stands, or goes down steadily, is where its neighbours in time
 * say.
 */
public final class SparseLooks {
  private final PoseEstimator pose;
  private final double apartS;
  private final double farOfStature;
  private final List<Frame> passed = new ArrayList<>();
  private double lastS;
  private boolean begun;

  /**
   * A frame that was taken.
   *
   * @param frame its picture is the caller's to give back
   * @param people empty where the pose model did not look
   */
  public record Taken(Frame frame, Optional<PeopleInView> people) {}

  /**
   * @param apartS frames sooner than this after the last look are passed over; 0 to look at all
   * @param farOfStature as in {@link PoseEstimator#between}
   */
  public SparseLooks(PoseEstimator pose, double apartS, double farOfStature) {
    this.pose = pose;
    this.apartS = apartS;
    this.farOfStature = farOfStature;
  }

  /**
   * Time between looks at every so many-th of the frames sampled from a clip that has enough of
   * them; a little more than half a frame early is on time. A clip of few frames a second is looked
   * at in more.
   */
  public static double apartS(double every, double sampledPerS) {
    return (every - 0.6) / sampledPerS;
  }

  /**
   * Takes the next sampled frame.
   *
   * @return frames about which it is decided now, in the order of time
   */
  public List<Taken> next(Frame frame) {
    if (begun && frame.timeS() - lastS < apartS) {
      passed.add(frame);
      return List.of();
    }
    begun = true;
    return lookAt(frame);
  }

  /** After the last frame: it is looked at, too. */
  public List<Taken> finish() {
    return passed.isEmpty() ? List.of() : lookAt(passed.remove(passed.size() - 1));
  }

  private List<Taken> lookAt(Frame frame) {
    PeopleInView people = pose.look(frame.image(), frame.timeS());
    List<Taken> taken = new ArrayList<>();
    for (Frame between : passed) {
      double share = (between.timeS() - lastS) / (frame.timeS() - lastS);
      taken.add(new Taken(between, pose.between(between.image(), share, farOfStature)));
    }
    passed.clear();
    lastS = frame.timeS();
    taken.add(new Taken(frame, Optional.of(people)));
    return taken;
  }
}
