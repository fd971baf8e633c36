package shinline.vision.clip;

import java.util.Optional;
import org.bytedeco.opencv.opencv_core.Mat;
import org.jspecify.annotations.Nullable;

/** A film read through FFmpeg. */
final class FfmpegClip implements Clip {
  private final ClipInfo info;
  private final PictureDecoder decoder;
  private final PictureConverter converter;
  private final FrameTally tally;
  private final double secondsPerTick;
  private final long firstTick;
  private final FrameChoice choice;
  private final Mat ownImage = new Mat();
  private int index;
  private boolean firstWaits = true;
  private boolean closed;
  private @Nullable ClipEnding ending;

  /**
   * @param decoder already moved to the first picture
   */
  FfmpegClip(
      ClipInfo info,
      PictureDecoder decoder,
      PictureConverter converter,
      FrameTally tally,
      double secondsPerTick,
      FrameChoice choice) {
    this.info = info;
    this.decoder = decoder;
    this.converter = converter;
    this.tally = tally;
    this.secondsPerTick = secondsPerTick;
    this.choice = choice;
    this.firstTick = decoder.tick();
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
    try {
      while (firstWaits || decoder.advance()) {
        firstWaits = false;
        FrameStamp stamp = new FrameStamp(index, (decoder.tick() - firstTick) * secondsPerTick);
        boolean wanted = choice.wants(stamp);
        if (wanted) {
          converter.convert(decoder.picture(), image);
        }
        index++;
        if (wanted) {
          return Optional.of(new Frame(stamp.index(), stamp.timeS(), image));
        }
      }
      ending = tally.ending(info.expectedFrames(), info.expectedDurationS());
    } catch (RuntimeException | OutOfMemoryError e) {
      // OpenCV and JavaCPP report a picture they cannot take, or no memory left, in this way.
      ending =
          new ClipEnding.Stopped(
              index,
              "reading stopped at a picture that could not be converted",
              "close other programs to free memory and try again; else copy the clip again");
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
  public void close() {
    if (!closed) {
      closed = true;
      converter.close();
      decoder.close();
      ownImage.close();
    }
  }
}
