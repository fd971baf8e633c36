package shinline.vision.pose;

/**
 * How the pose model is run.
 *
 * @param threads cores one inference may use, 1 or 2; default 1, which beside a decoding thread is
 *     the faster choice on two cores
 * @param settlingPasses extra passes on the frame of a detection, each on the region the last one
 *     found; default 1: a detector's region is rough
 */
public record PoseOptions(int threads, int settlingPasses) {
  /** The defaults named above. */
  public static final PoseOptions DEFAULT = new PoseOptions(1, 1);

  public PoseOptions {
    if (threads < 1 || threads > 2) {
      throw new IllegalArgumentException("threads must be 1 or 2, not " + threads);
    }
    if (settlingPasses < 0) {
      throw new IllegalArgumentException("settlingPasses must be 0 or more, not " + settlingPasses);
    }
  }
}
