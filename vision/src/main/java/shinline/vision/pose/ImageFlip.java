package shinline.vision.pose;

/** Whether the model looks at the picture as it is or at its mirror image. */
public enum ImageFlip {
  AS_FILMED,
  /**
   * The crop is flipped left to right before the model sees it; places and the names of left and
   * right are turned back after, so that both passes answer the same question.
   */
  MIRRORED;

  /** The one that this is not. */
  ImageFlip other() {
    return this == MIRRORED ? AS_FILMED : MIRRORED;
  }
}
