package shinline.vision.scene;

/** The reasons whose kind says it all. */
public enum NoDiscReason implements NoDisc {
  /** The place to look at lies outside the picture. */
  OUTSIDE_PICTURE,
  /** No round rim of the expected size is seen clearly enough. */
  NO_RIM,
  /** Nobody was found to look beside. */
  NOBODY,
  /** Frames show discs of different sizes. */
  FRAMES_DISAGREE,
  /** One frame alone shows a disc. */
  ONE_FRAME
}
