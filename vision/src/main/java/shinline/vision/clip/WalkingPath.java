package shinline.vision.clip;

import java.util.Optional;

/**
 * Goes through all pictures of a film, one after another. Those that are passed over undecoded,
 * foreseen to be wanted by nobody, count like any other. Where a picture does not come out as was
 * foreseen the film is damaged, and gone through once more from its beginning, without foresight:
 * of a damaged film every picture has to tell whether it is there.
 */
final class WalkingPath implements PicturePath {
  private final PictureDecoder decoder;
  private final double secondsPerTick;
  private final FrameChoice choice;
  private final Foresight foresight;
  private final long firstTick;
  private FrameTimes times = new FrameTimes();
  private int index;

  /** Time of the last picture that the choice was asked about. */
  private long askedTick;

  /**
   * @param decoder already moved to the first picture
   * @param foresight as the decoder was begun with, or none
   */
  WalkingPath(
      PictureDecoder decoder, double secondsPerTick, FrameChoice choice, Foresight foresight) {
    this.decoder = decoder;
    this.secondsPerTick = secondsPerTick;
    this.choice = choice;
    this.foresight = foresight;
    this.firstTick = decoder.tick();
  }

  @Override
  public Optional<FrameStamp> next() {
    while (move()) {
      FrameStamp stamp = count(decoder.tick());
      if (wants(stamp, decoder.tick())) {
        return Optional.of(stamp);
      }
    }
    return Optional.empty();
  }

  private boolean move() {
    if (index == 0) {
      foresight.begin(firstTick);
      return true;
    }
    boolean moved = decoder.advance();
    if (decoder.mayHavePassedOverDamage()) {
      return walkAgain();
    }
    for (long passed : decoder.passedOver()) {
      // Foreseen not to be wanted; asked as it is asked about every picture.
      wants(count(passed), passed);
    }
    return moved;
  }

  /** Asks with the same words as the copy that foresees was asked. */
  private boolean wants(FrameStamp stamp, long tick) {
    askedTick = tick;
    boolean wanted = choice.wants(stamp, foresight.insteadS(tick));
    foresight.decided(tick);
    return wanted;
  }

  /** Begins the film again, and moves to the first picture after those already asked about. */
  private boolean walkAgain() {
    if (!decoder.restart()) {
      return false;
    }
    index = 0;
    times = new FrameTimes();
    while (decoder.tick() <= askedTick) {
      count(decoder.tick());
      if (!decoder.advance()) {
        return false;
      }
    }
    return true;
  }

  private FrameStamp count(long tick) {
    FrameStamp stamp = new FrameStamp(index, (tick - firstTick) * secondsPerTick);
    index++;
    times.add(stamp.timeS());
    return stamp;
  }

  @Override
  public FrameTimes times() {
    return times;
  }
}
