package shinline.metrics.correction;

/**
 * Where the joint centres lie against the model's landmarks, as shares of the athlete's trunk,
 * thigh and shank together. {@code along} is up the segment, {@code ahead} is to its front (for a
 * standing segment: forward).
 *
 * <p>Fitted by least squares over every frame of seven computer-made clips with truth (five bodies,
 * two renderers, front leg near and far, floor and bench), each clip with the same weight; left out
 * one clip at a time, the fit still brings the bottom values within 0.6 degrees (shin), 1.3
 * (trunk), 1.2 (thigh) and 1.6 (knee flexion) on the mean. Constant offsets sufficed but for the
 * front hip, whose offset grows as the hip bends; more terms did worse on the clip left out
 * (docs/decisions/0006-joint-centres.md).
 *
 * @param hip of mid-hip, in the frame of the trunk
 * @param shoulder of mid-shoulder, in the frame of the trunk
 * @param frontHip in the frame of the trunk
 * @param frontHipBend added to {@code frontHip} for each radian of hip flexion
 * @param frontKnee in the frame of the shank
 * @param frontAnkle in the frame of the shank
 * @param frontToe in the frame of the picture
 * @param frontHeel in the frame of the picture
 * @param rearKnee in the frame of the picture
 */
public record CorrectionTable(
    Offset hip,
    Offset shoulder,
    Offset frontHip,
    Offset frontHipBend,
    Offset frontKnee,
    Offset frontAnkle,
    Offset frontToe,
    Offset frontHeel,
    Offset rearKnee) {

  /** An offset, share of trunk, thigh and shank together. */
  public record Offset(double along, double ahead) {}

  public static final CorrectionTable DEFAULT =
      new CorrectionTable(
          new Offset(-0.00106, -0.02058),
          new Offset(-0.03308, 0.00612),
          new Offset(0.01734, -0.0419),
          new Offset(-0.02311, 0.00162),
          new Offset(-0.00854, 0.00309),
          new Offset(-0.02414, 0.00019),
          new Offset(-0.00598, 0.0088),
          new Offset(-0.01185, -0.01141),
          new Offset(-0.01059, -0.00177));
}
