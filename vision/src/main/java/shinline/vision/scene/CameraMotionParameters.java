package shinline.vision.scene;

/**
 * Settings of {@link CameraMotion}. Chosen on the development clips, still and shaken.
 *
 * @param workWidthPx frames are shrunk to this longer side before they are compared; 480
 * @param points background points followed; 140
 * @param pointSpacingPx least distance between two of them, shrunk pixels; 6
 * @param fewestPoints fewer agreeing points than this and the frame is lost; 12
 * @param plentyOfPoints when the background around the athlete offers fewer than this, places at
 *     the athlete are followed too (the wall and rack behind), and believed only when what there is
 *     around moves with them; 40
 * @param agreePx a point agrees when it lies this close to the common move, shrunk pixels; 0.8
 * @param anchorShare a new key frame is taken when fewer than this share of its points are still
 *     followed; 0.4
 * @param steadyShare room wander, as a share of the longer side, below which the camera counts as
 *     still; 0.0007, which is 0.7 px at 960 and about 2 mm on a filmed athlete
 * @param followedShare share of the frames that must be followed for an answer; 0.7
 */
public record CameraMotionParameters(
    int workWidthPx,
    int points,
    double pointSpacingPx,
    int fewestPoints,
    int plentyOfPoints,
    double agreePx,
    double anchorShare,
    double steadyShare,
    double followedShare) {

  /** Checks the ranges. */
  public CameraMotionParameters {
    if (workWidthPx < 160) {
      throw new IllegalArgumentException("workWidthPx must be at least 160: " + workWidthPx);
    }
    if (fewestPoints < 4 || points < fewestPoints) {
      throw new IllegalArgumentException(
          "need 4 <= fewestPoints <= points, got " + fewestPoints + " and " + points);
    }
    if (!(agreePx > 0 && steadyShare > 0)) {
      throw new IllegalArgumentException("agreePx and steadyShare must be above 0");
    }
  }

  /** The documented defaults. */
  public static CameraMotionParameters defaults() {
    return new CameraMotionParameters(480, 140, 6, 12, 40, 0.8, 0.4, 0.0007, 0.7);
  }
}
