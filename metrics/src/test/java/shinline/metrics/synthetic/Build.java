package shinline.metrics.synthetic;

/**
 * The lengths of an athlete between joint centres, shares of standing height.
 *
 * @param shank ankle to knee
 * @param thigh knee to hip
 * @param trunk mid-hip to mid-shoulder
 */
public record Build(double shank, double thigh, double trunk) {
  /**
   * Shank and thigh: Drillis and Contini 1966, in Winter 2009 fig. 4.1. Trunk: the mean of what the
   * truth files of the sample clips hold, 0.258, 0.270 and 0.267. (That figure's 0.288 ends where
   * the arm hangs on the outside, above the joint.)
   */
  public static final Build USUAL = new Build(0.246, 0.245, 0.265);

  /** Tall sprinters' legs under a short trunk. */
  public static final Build LONG_LEGS = new Build(0.262, 0.258, 0.245);

  /** The other way round. */
  public static final Build LONG_TRUNK = new Build(0.232, 0.236, 0.285);

  /** A long thigh over a short shank. */
  public static final Build LONG_THIGH = new Build(0.230, 0.262, 0.265);
}
