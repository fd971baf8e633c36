package shinline.vision.pose;

/**
 * How the pose model is run.
 *
 * @param threads cores one inference may use, 1 or 2; default 1, which beside a decoding thread is
 *     the faster choice on two cores
 * @param settlingPasses extra passes on the frame of a detection, each on the region the last one
 *     found; default 1: a detector's region is rough
 * @param passes whether every look is at the picture as filmed, or every second one at its mirror
 *     image; default alternating: where the model cannot tell the legs apart it answers with places
 *     between them, and the mirrored look is seldom at a loss in the same moment, so that a look
 *     nearby fills in; it also halves what the model gets wrong for one side only
 */
public record PoseOptions(int threads, int settlingPasses, Passes passes) {

  /** What consecutive looks are at. */
  public enum Passes {
    AS_FILMED,
    ALTERNATING
  }

  /** The defaults named above. */
  public static final PoseOptions DEFAULT = new PoseOptions(1, 1, Passes.ALTERNATING);

  public PoseOptions {
    if (threads < 1 || threads > 2) {
      throw new IllegalArgumentException("threads must be 1 or 2, not " + threads);
    }
    if (settlingPasses < 0) {
      throw new IllegalArgumentException("settlingPasses must be 0 or more, not " + settlingPasses);
    }
  }
}
