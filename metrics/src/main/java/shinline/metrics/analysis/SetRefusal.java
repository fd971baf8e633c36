package shinline.metrics.analysis;

import java.util.Optional;
import java.util.function.Function;
import shinline.metrics.reps.NotCounted;
import shinline.metrics.track.LegIdentity;

/** Why no set can be measured in a track. */
public sealed interface SetRefusal {

  /** Those that need no number. */
  enum PlainSetRefusal implements SetRefusal {
    NOBODY_FOUND(Kind.NOBODY),
    /** The athlete was found in too few looks. */
    SELDOM_FOUND(Kind.NOBODY),
    /** Too few looks to hold a rep. */
    CLIP_TOO_SHORT(Kind.TOO_SHORT),
    /** Hip, knee, ankle and foot were never seen together. */
    NEVER_WHOLE(Kind.LEGS_UNRESOLVED);

    private final Kind kind;

    PlainSetRefusal(Kind kind) {
      this.kind = kind;
    }
  }

  /**
   * Too far off a true side view.
   *
   * @param yawDeg how far, unsigned
   * @param mostDeg the most that can be measured
   */
  record OffSide(double yawDeg, double mostDeg) implements SetRefusal {}

  /**
   * The part that was asked for begins behind the clip's end.
   *
   * @param fromS where it was to begin
   * @param clipS how long the clip is
   */
  record PartBehind(double fromS, double clipS) implements SetRefusal {}

  /** The front and the rear leg cannot be told apart. */
  record LegsAlike(LegIdentity.LegDoubt doubt) implements SetRefusal {}

  /**
   * Nothing that counts as a rep.
   *
   * @param first why the first movement was not counted; empty when there was none
   */
  record NoRep(Optional<NotCounted.Reason> first) implements SetRefusal {}

  /** Its kind in the result format. */
  enum Kind {
    NOBODY,
    NOT_SIDE_VIEW,
    NO_REP,
    LEGS_UNRESOLVED,
    TOO_SHORT
  }

  default <T> T fold(
      Function<PlainSetRefusal, T> plain,
      Function<OffSide, T> offSide,
      Function<PartBehind, T> part,
      Function<LegsAlike, T> legs,
      Function<NoRep, T> noRep) {
    if (this instanceof PlainSetRefusal r) {
      return plain.apply(r);
    } else if (this instanceof OffSide r) {
      return offSide.apply(r);
    } else if (this instanceof PartBehind r) {
      return part.apply(r);
    } else if (this instanceof LegsAlike r) {
      return legs.apply(r);
    }
    return noRep.apply((NoRep) this);
  }

  default Kind kind() {
    return fold(
        plain -> plain.kind,
        off -> Kind.NOT_SIDE_VIEW,
        part -> Kind.TOO_SHORT,
        legs -> Kind.LEGS_UNRESOLVED,
        noRep -> Kind.NO_REP);
  }
}
