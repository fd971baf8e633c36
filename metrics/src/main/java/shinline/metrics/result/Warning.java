package shinline.metrics.result;

import java.util.List;
import java.util.function.Function;
import shinline.metrics.track.Side;

/** What a coach should know of how a set was filmed, before the numbers are read. */
public sealed interface Warning {

  /** Those that need no number. */
  enum PlainWarning implements Warning {
    /** The camera moved, and the background shows too little to steady the picture by. */
    CAMERA_MOVED,
    /** The way the athlete faces is not clear. */
    FACING_UNSURE,
    /** The camera is too far off the side to see the outline of the back. */
    BACK_OFF_SIDE,
    /** Something hides the shoulders, as the disc of a bar does. */
    SHOULDERS_HIDDEN
  }

  /**
   * Far enough off a true side view to be less sure.
   *
   * @param yawDeg how far, unsigned
   */
  record OffSide(double yawDeg) implements Warning {}

  /**
   * Nothing tells how far the camera looked up or down.
   *
   * @param shinPlusMinusDeg by how much that alone leaves the shin unsure
   */
  record PitchUnknown(double shinPlusMinusDeg) implements Warning {}

  /**
   * The disc and the athlete's height disagree, and the height counts.
   *
   * @param share by how much everything would differ by the disc; positive
   * @param disc where the disc would have to be
   */
  record DiscDisagrees(double share, DiscPlace disc) implements Warning {}

  /** Where a disc is against the athlete. */
  enum DiscPlace {
    /** It looks too large, and makes everything small. */
    NEARER,
    FARTHER
  }

  /** By the disc, an athlete of a height that few have. */
  record UnusualStature(double statureCm) implements Warning {}

  /** Left and right could be told apart only weakly. */
  record LegsUnsure(Side frontLeg) implements Warning {}

  /**
   * The outline of the back was not seen well enough.
   *
   * @param reps numbers of the reps, at least one
   * @param all how many reps there are
   */
  record BackUnseen(List<Integer> reps, int all) implements Warning {
    public BackUnseen {
      reps = List.copyOf(reps);
    }
  }

  default <T> T fold(
      Function<PlainWarning, T> plain,
      Function<OffSide, T> offSide,
      Function<PitchUnknown, T> pitch,
      Function<DiscDisagrees, T> disc,
      Function<UnusualStature, T> stature,
      Function<LegsUnsure, T> legs,
      Function<BackUnseen, T> back) {
    if (this instanceof PlainWarning w) {
      return plain.apply(w);
    } else if (this instanceof OffSide w) {
      return offSide.apply(w);
    } else if (this instanceof PitchUnknown w) {
      return pitch.apply(w);
    } else if (this instanceof DiscDisagrees w) {
      return disc.apply(w);
    } else if (this instanceof UnusualStature w) {
      return stature.apply(w);
    } else if (this instanceof LegsUnsure w) {
      return legs.apply(w);
    }
    return back.apply((BackUnseen) this);
  }
}
