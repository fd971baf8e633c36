package shinline.vision.clip;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Goes from one known picture to the next by the film's index. A picture is taken only when its
 * time is the very one that was asked for, decoding began at or before it, and no damage was met:
 * then it is the same as by walking, unless the decoder takes damage for a picture. At the first
 * that does not come out in this way the film is walked through instead, from its beginning.
 */
final class LeapingPath implements PicturePath {
  private final PictureDecoder decoder;
  private final double secondsPerTick;
  private final long firstTick;
  private final Deque<FrameStamp> left;
  private final FrameTimes times = new FrameTimes();
  private Optional<PicturePath> instead = Optional.empty();

  /**
   * @param decoder already moved to the first picture, of a film with an index
   */
  LeapingPath(PictureDecoder decoder, double secondsPerTick, KnownFrames wanted) {
    this.decoder = decoder;
    this.secondsPerTick = secondsPerTick;
    this.firstTick = decoder.tick();
    this.left = new ArrayDeque<>(wanted.stamps());
    Set<Long> ticks = left.stream().map(this::tick).collect(Collectors.toUnmodifiableSet());
    decoder.passOver(tick -> !ticks.contains(tick));
  }

  private long tick(FrameStamp stamp) {
    return firstTick + Math.round(stamp.timeS() / secondsPerTick);
  }

  @Override
  public Optional<FrameStamp> next() {
    if (instead.isPresent()) {
      return instead.get().next();
    }
    if (left.isEmpty()) {
      return Optional.empty();
    }
    long tick = tick(left.peek());
    if (decoder.leap(tick)) {
      double timeS = (tick - firstTick) * secondsPerTick;
      times.add(timeS);
      return Optional.of(new FrameStamp(left.remove().index(), timeS));
    }
    if (!decoder.restart()) {
      return Optional.empty();
    }
    PicturePath walk =
        new WalkingPath(decoder, secondsPerTick, new KnownFrames(left, 0), Foresight.none());
    instead = Optional.of(walk);
    return walk.next();
  }

  @Override
  public FrameTimes times() {
    return instead.map(PicturePath::times).orElse(times);
  }
}
