package shinline.vision.clip;

import java.util.Optional;

/**
 * Which frames the pose model may look at. A lift is slow: hips and knees hold no detail above 6
 * Hz, so some fifteen frames a second tell all there is, most of them even fewer
 * (docs/decisions/0005 and 0015, measured on clips with truth).
 */
public final class FrameSampling implements FrameChoice {
  private final ClipPart part;
  private final double everyS;
  private double dueS;
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
    lastS = other.lastS;
  }

  @Override
  public Optional<FrameChoice> copy() {
    return Optional.of(new FrameSampling(this));
  }

  @Override
  public boolean wants(FrameStamp stamp) {
    double timeS = stamp.timeS();
    double stepS = Double.isInfinite(lastS) ? 0 : timeS - lastS;
    lastS = timeS;
    // A quarter of a frame early is on time: frame times do not meet the schedule exactly.
    if (timeS < dueS - stepS / 4 || !part.holds(timeS)) {
      return false;
    }
    dueS = Math.max(dueS + everyS, timeS + everyS / 2);
    return true;
  }
}
