package shinline.vision.scene;

/** Settings of {@link CameraMotion}. Chosen on the development clips, still and shaken. */
final class CameraMotionParameters {
  /** Frames are shrunk to this longer side before they are compared. */
  static final int WORK_WIDTH_PX = 480;

  /** Background points followed. */
  static final int POINTS = 140;

  /** Least distance between two of them, shrunk pixels. */
  static final double POINT_SPACING_PX = 6;

  /** Fewer agreeing points than this and the frame is lost. */
  static final int FEWEST_POINTS = 12;

  /**
   * When the background around the athlete offers fewer than this, places at the athlete are
   * followed too (the wall and rack behind), and believed only when what there is around moves with
   * them.
   */
  static final int PLENTY_OF_POINTS = 40;

  /** A point agrees when it lies this close to the common move, shrunk pixels. */
  static final double AGREE_PX = 0.8;

  /** A new key frame is taken when fewer than this share of its points are still followed. */
  static final double ANCHOR_SHARE = 0.4;

  /**
   * Room wander, as a share of the longer side, below which the camera counts as still: 0.7 px at
   * 960 and about 2 mm on a filmed athlete.
   */
  static final double STEADY_SHARE = 0.0007;

  /** Share of the frames that must be followed for an answer. */
  static final double FOLLOWED_SHARE = 0.7;

  private CameraMotionParameters() {}
}
