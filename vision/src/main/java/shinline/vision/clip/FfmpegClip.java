package shinline.vision.clip;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.bytedeco.opencv.opencv_core.Mat;
import org.jspecify.annotations.Nullable;

/** A film read through FFmpeg. */
final class FfmpegClip implements Clip {
  private final ClipInfo info;
  private final PictureDecoder decoder;
  private final PictureConverter converter;
  private final FrameTally tally;
  private final PicturePath path;

  /** Pictures after which nothing more is wanted, if that is known. */
  private final OptionalInt wanted;

  private final Mat ownImage = new Mat();
  private int handedOut;
  private boolean closed;
  private @Nullable ClipEnding ending;

  /**
   * @param decoder already moved to the first picture
   * @param foresight as the decoder was begun with
   */
  FfmpegClip(
      ClipInfo info,
      PictureDecoder decoder,
      PictureConverter converter,
      FrameTally tally,
      double secondsPerTick,
      FrameChoice choice,
      Foresight foresight) {
    this.info = info;
    this.decoder = decoder;
    this.converter = converter;
    this.tally = tally;
    this.wanted =
        choice
            .known()
            .map(known -> OptionalInt.of(known.stamps().size()))
            .orElse(OptionalInt.empty());
    this.path =
        decoder.mayLeap()
            ? new LeapingPath(decoder, secondsPerTick, choice.known().orElseThrow())
            : new WalkingPath(decoder, secondsPerTick, choice, foresight);
  }

  @Override
  public ClipInfo info() {
    return info;
  }

  @Override
  public Optional<Frame> next() {
    return nextInto(ownImage);
  }

  @Override
  public Optional<Frame> nextInto(Mat image) {
    if (closed) {
      throw new IllegalStateException("the clip is closed");
    }
    if (ending != null) {
      return Optional.empty();
    }
    if (wanted.isPresent() && handedOut == wanted.getAsInt()) {
      ending = new ClipEnding.Complete(handedOut);
      return Optional.empty();
    }
    try {
      Optional<FrameStamp> stamp = path.next();
      Optional<ClipEnding.StopCause> breach = tally.breach();
      if (breach.isPresent()) {
        ending = new ClipEnding.Stopped(handedOut, breach.get());
        return Optional.empty();
      }
      if (stamp.isPresent()) {
        converter.convert(decoder.picture(), image);
        handedOut++;
        return Optional.of(new Frame(stamp.get().index(), stamp.get().timeS(), image));
      }
      ending = tally.ending(info.expectedFrames(), info.expectedDurationS());
    } catch (RuntimeException | OutOfMemoryError e) {
      // OpenCV and JavaCPP report a picture they cannot take, or no memory left, in this way.
      ending = new ClipEnding.Stopped(handedOut, ClipEnding.StopCause.PICTURE_FAILED);
    }
    return Optional.empty();
  }

  @Override
  public ClipEnding ending() {
    if (ending == null) {
      throw new IllegalStateException("the clip has not been read to its end");
    }
    return ending;
  }

  @Override
  public FrameTimes times() {
    ending();
    return path.times();
  }

  @Override
  public List<DoubtfulPictures> doubtful() {
    ending();
    return tally.doubtful();
  }

  @Override
  public void close() {
    if (!closed) {
      closed = true;
      converter.close();
      decoder.close();
      ownImage.close();
    }
  }
}
