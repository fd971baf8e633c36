package shinline.vision.clip;

import java.util.Optional;

/** Goes through all pictures of a film, one after another. */
final class WalkingPath implements PicturePath {
  private final PictureDecoder decoder;
  private final double secondsPerTick;
  private final FrameChoice choice;
  private final long firstTick;
  private final FrameTimes times = new FrameTimes();
  private int index;

  /**
   * @param decoder already moved to the first picture
   */
  WalkingPath(PictureDecoder decoder, double secondsPerTick, FrameChoice choice) {
    this.decoder = decoder;
    this.secondsPerTick = secondsPerTick;
    this.choice = choice;
    this.firstTick = decoder.tick();
  }

  @Override
  public Optional<FrameStamp> next() {
    while (index == 0 || decoder.advance()) {
      FrameStamp stamp = new FrameStamp(index, (decoder.tick() - firstTick) * secondsPerTick);
      index++;
      times.add(stamp.timeS());
      if (choice.wants(stamp)) {
        return Optional.of(stamp);
      }
    }
    return Optional.empty();
  }

  @Override
  public FrameTimes times() {
    return times;
  }
}
