package shinline.vision.library;

/**
 * How the work on a clip is shared among the processor's cores. Decoding, the pose model and what
 * watches beside it have a thread each; with more than two cores the first two get more, and since
 * no sum is split between threads, the numbers stay the same to the last bit.
 *
 * @param count cores, 1 or more
 */
public record Cores(int count) {
  /** From here on there is a core to spare for each of the two. */
  private static final int MANY = 4;

  /** A look of the pose model gains little from more. */
  private static final int MOST_FOR_POSE = 4;

  private static final int DECODING = 2;

  public Cores {
    if (count < 1) {
      throw new IllegalArgumentException(count + " cores");
    }
  }

  /** Those of this machine. */
  public static Cores here() {
    return new Cores(Runtime.getRuntime().availableProcessors());
  }

  /** For one look of the pose model. */
  public int forPose() {
    return count < MANY ? 1 : Math.min(MOST_FOR_POSE, count / 2);
  }

  /** For decoding while the pose model looks. */
  public int forDecoding() {
    return count < MANY ? 1 : DECODING;
  }

  /** The same where looks are so quick that they wait for pictures. */
  public int forDecodingBesideQuickLooks() {
    return Math.min(count, DECODING);
  }
}
