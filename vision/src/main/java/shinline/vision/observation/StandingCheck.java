package shinline.vision.observation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import shinline.vision.pose.PoseSighting;

/**
 * Notices a clip whose rotation tag is wrong or missing: the athlete stands on the head or lies.
 * The first looks decide; nobody trains that way.
 */
public final class StandingCheck {
  /** Looks that decide, and how many of them must agree. */
  private static final int LOOKS = 8;

  private static final double AGREE = 0.75;

  private final List<Integer> turns = new ArrayList<>();

  /** Adds a look; empty until decided, then the clockwise quarter turns that are missing, 0…3. */
  public OptionalInt look(PoseSighting sighting) {
    if (turns.size() >= LOOKS) {
      return OptionalInt.empty();
    }
    if (sighting instanceof PoseSighting.Found found) {
      turns.add(PoseShape.missingQuarterTurns(found));
    }
    if (turns.size() < LOOKS) {
      return OptionalInt.empty();
    }
    int most = 0;
    for (int quarter = 1; quarter < 4; quarter++) {
      most = count(quarter) > count(most) ? quarter : most;
    }
    return OptionalInt.of(count(most) >= AGREE * LOOKS ? most : 0);
  }

  private long count(int quarter) {
    return turns.stream().filter(t -> t == quarter).count();
  }
}
