package shinline.vision.clip;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Which frames the pose model may look at. A lift is slow: hips and knees hold no detail above 6
 * Hz, so some fifteen frames a second tell all there is, most of them even fewer
 * (docs/decisions/0005 and 0015, measured on clips with truth).
 *
 * <p>Often every second picture has to be decoded for others, and those between need not be: where
 * the schedule has fallen on these it is put off by one picture, and goes on from there.
 */
public final class FrameSampling implements FrameChoice {
  /**
   * A picture is waited for at most so long, in intervals: half, and a little for rounded times.
   */
  private static final double LONGEST_WAIT = 0.55;

  /** From one putting off to the next, so that frames stay regular and hardly fewer: 14.5 of 15. */
  private static final double LEAST_BETWEEN_S = 1;

  private final ClipPart part;
  private final double everyS;
  private double dueS;
  private double putOffS = Double.NEGATIVE_INFINITY;
  private double lastS = Double.NEGATIVE_INFINITY;

  /**
   * @param sampledFramesPerS looks a second, about; more than the clip has frames looks at every
   *     frame
   * @param part the frames outside it are passed over
   */
  public FrameSampling(double sampledFramesPerS, ClipPart part) {
    this.part = part;
    everyS = 1 / sampledFramesPerS;
  }

  private FrameSampling(FrameSampling other) {
    part = other.part;
    everyS = other.everyS;
    dueS = other.dueS;
    putOffS = other.putOffS;
    lastS = other.lastS;
  }

  @Override
  public Optional<FrameChoice> copy() {
    return Optional.of(new FrameSampling(this));
  }

  @Override
  public boolean wants(FrameStamp stamp) {
    return wants(stamp, OptionalDouble.empty());
  }

  @Override
  public boolean wants(FrameStamp stamp, OptionalDouble insteadS) {
    double timeS = stamp.timeS();
    boolean first = Double.isInfinite(lastS);
    double stepS = first ? 0 : timeS - lastS;
    lastS = timeS;
    // A quarter of a frame early is on time: frame times do not meet the schedule exactly.
    if (timeS < dueS - stepS / 4 || !part.holds(timeS)) {
      return false;
    }
    if (!first && insteadS.isPresent() && mayWait(timeS, insteadS.getAsDouble())) {
      putOffS = timeS;
      dueS = insteadS.getAsDouble();
      return false;
    }
    dueS = Math.max(dueS + everyS, timeS + everyS / 2);
    return true;
  }

  private boolean mayWait(double timeS, double insteadS) {
    return insteadS - timeS <= LONGEST_WAIT * everyS
        && timeS - putOffS >= LEAST_BETWEEN_S
        && part.holds(insteadS);
  }
}
