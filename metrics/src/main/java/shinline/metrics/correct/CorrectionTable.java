package shinline.metrics.correct;

/**
 * Where the joint centres lie against the model's landmarks, as shares of the athlete's trunk,
 * thigh and shank together. {@code along} is up the segment, {@code ahead} is to its front (for a
 * standing segment: forward).
 *
 * <p>Fitted by least squares over every frame of seven computer-made clips with truth (five bodies,
 * two renderers, front leg near and far, floor and bench), each clip with the same weight; left out
 * one clip at a time, the fit still brings the bottom values within 0.7 degrees (shin), 1.4
 * (trunk), 1.4 (thigh) and 1.9 (knee flexion) on the mean. Constant offsets sufficed but for the
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
          new Offset(-0.00096, -0.02057),
          new Offset(-0.03328, 0.00613),
          new Offset(0.01794, -0.0418),
          new Offset(-0.02348, 0.00157),
          new Offset(-0.0082, 0.00346),
          new Offset(-0.02392, -0.00004),
          new Offset(-0.00596, 0.0088),
          new Offset(-0.01187, -0.01115),
          new Offset(-0.01142, -0.00347));
}
