package shinline.vision.clip;

import java.util.Optional;

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
