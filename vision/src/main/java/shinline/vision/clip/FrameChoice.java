package shinline.vision.clip;

/**
 * Which pictures of a clip are wanted. A picture that is not is decoded, as those after it need it,
 * but not converted, scaled or turned, which costs as much again.
 */
@FunctionalInterface
public interface FrameChoice {
  /** Every picture. */
  FrameChoice ALL = stamp -> true;

  /**
   * Asked once for every picture, in their order, on whichever thread decodes; whatever the choice
   * keeps may be read by the caller once the clip has ended or is closed.
   */
  boolean wants(FrameStamp stamp);
}
