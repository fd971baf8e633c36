package shinline.vision.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shinline.vision.clip.Frame;
import shinline.vision.clip.PicturePool;
import shinline.vision.pose.PeopleInView;
import shinline.vision.pose.PoseEstimator;

/**
 * Has the pose model look at every so many-th sampled frame, and at those between only where
 * somebody changed pace: a body that stands, or goes down steadily, is where its neighbours in time
 * say. While nobody moves at all looks lie twice as far apart; the one left out is made up for when
 * the stillness ends.
 */
public final class SparseLooks {
  private final PoseEstimator pose;
  private final PicturePool pictures;
  private final LookSpacing spacing;
  private final List<Frame> passed = new ArrayList<>();
  private double lastS;
  private boolean begun;
  private boolean still;

  /**
   * A frame that was looked at.
   *
   * @param frame its picture is the caller's to give back
   */
  public record Look(Frame frame, PeopleInView people) {}

  /**
   * @param pictures to which the pictures of frames that nobody looks at are given back
   */
  public SparseLooks(PoseEstimator pose, PicturePool pictures, LookSpacing spacing) {
    this.pose = pose;
    this.pictures = pictures;
    this.spacing = spacing;
  }

  /**
   * Takes the next sampled frame.
   *
   * @return looks that are complete now, in the order of time
   */
  public List<Look> next(Frame frame) {
    int apart = still ? 2 * spacing.every() : spacing.every();
    if (begun && passed.size() < apart - 1) {
      passed.add(frame);
      return List.of();
    }
    begun = true;
    return lookAt(frame);
  }

  /** After the last frame: it is looked at, too. */
  public List<Look> finish() {
    return passed.isEmpty() ? List.of() : lookAt(passed.remove(passed.size() - 1));
  }

  private List<Look> lookAt(Frame frame) {
    PeopleInView people = pose.look(frame.image(), frame.timeS());
    boolean begins = still;
    still = spacing.every() > 1 && pose.still(spacing.stillOfStature());
    begins &= !still;
    List<Look> looks = new ArrayList<>();
    for (int i = 0; i < passed.size(); i++) {
      Frame between = passed.get(i);
      boolean leftOut = begins && (i + 1) % spacing.every() == 0;
      double share = (between.timeS() - lastS) / (frame.timeS() - lastS);
      Optional<PeopleInView> there =
          pose.between(between.image(), share, leftOut ? 0 : spacing.paceOfStature());
      if (there.isPresent()) {
        looks.add(new Look(between, there.get()));
      } else {
        pictures.give(between.image());
      }
    }
    passed.clear();
    lastS = frame.timeS();
    looks.add(new Look(frame, people));
    return looks;
  }
}
