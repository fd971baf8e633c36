package shinline.vision.pose;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Everybody in one frame.
 *
 * @param mover number of the one whose hips go down and up, as far as that is known by now; before
 *     anybody has moved, of the one seen most surely
 * @param people what was seen of each who was ever followed, by a number that stays the same
 *     through the clip
 * @param unlooked where those stood a moment ago who were not looked at in this frame
 * @param bystanders squares around people, or what looks like them, that are not followed
 * @param company whether somebody else is in view, and moves, as far as that is known by now
 */
public record PeopleInView(
    int mover,
    Map<Integer, PoseSighting> people,
    List<PoseSighting.Found> unlooked,
    List<RegionOfInterest> bystanders,
    Company company) {

  /** Who else is there. */
  public enum Company {
    NOBODY,
    /** Others stand or walk about. */
    STANDING_BY,
    /** Somebody else's hips go down and up about as often. */
    MOVING_TOO
  }

  public PeopleInView {
    people = Collections.unmodifiableMap(new TreeMap<>(people));
    unlooked = List.copyOf(unlooked);
    bystanders = List.copyOf(bystanders);
  }

  /** One person alone, or nobody. */
  public static PeopleInView alone(PoseSighting sighting) {
    return new PeopleInView(0, Map.of(0, sighting), List.of(), List.of(), Company.NOBODY);
  }

  /** The one whose hips go down and up. */
  public PoseSighting ofMover() {
    return of(mover);
  }

  /** One of the people. */
  public PoseSighting of(int number) {
    return Objects.requireNonNullElse(
        people.get(number), new PoseSighting.NobodyFound(PoseSighting.Reason.NO_PERSON_DETECTED));
  }

  /** The poses of all who are followed, each as last seen. */
  public List<PoseSighting.Found> poses() {
    List<PoseSighting.Found> poses = new ArrayList<>(unlooked);
    for (PoseSighting sighting : people.values()) {
      if (sighting instanceof PoseSighting.Found found) {
        poses.add(found);
      }
    }
    return poses;
  }
}
