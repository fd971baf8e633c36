package shinline.vision.clip;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which pictures of a clip are wanted. A picture that is not is decoded where others may need it,
 * but not converted, scaled or turned, which costs as much again.
 */
@FunctionalInterface
public interface FrameChoice {
  /** Every picture. */
  FrameChoice ALL = stamp -> true;

  /** Asked once for every picture, in their order, on whichever thread decodes. */
  boolean wants(FrameStamp stamp);

  /**
   * The same question where more is known: a reader asks this one, and it asks {@link
   * #wants(FrameStamp)} unless a choice knows better.
   *
   * @param insteadS when the next picture is shown, as {@link FrameStamp#timeS}, if that one has to
   *     be decoded for others anyway and this one need not be; empty if not, or not known
   */
  default boolean wants(FrameStamp stamp, OptionalDouble insteadS) {
    return wants(stamp);
  }

  /**
   * The wanted pictures, when they are known from an earlier reading; empty when each has to be
   * asked about. A reader may leap over what lies between known ones, unasked.
   */
  default Optional<KnownFrames> known() {
    return Optional.empty();
  }

  /**
   * A choice of its own that answers from here on as this one will: it is asked ahead of the
   * pictures, so that some that nobody wants need not be decoded. Empty when that is not possible,
   * and all are decoded.
   */
  default Optional<FrameChoice> copy() {
    return Optional.empty();
  }
}
