package shinline.vision.clip;

import java.util.Optional;
import java.util.function.BiFunction;
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
      double secondsPerTick) {
    this.info = info;
    this.decoder = decoder;
    this.converter = converter;
    this.tally = tally;
    this.secondsPerTick = secondsPerTick;
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
    return step(
        (place, timeS) -> {
          converter.convert(decoder.picture(), image);
          return new Frame(place, timeS, image);
        });
  }

  @Override
  public Optional<FrameStamp> skip() {
    return step(FrameStamp::new);
  }

  private <T> Optional<T> step(BiFunction<Integer, Double, T> use) {
    if (closed) {
      throw new IllegalStateException("the clip is closed");
    }
    if (ending != null) {
      return Optional.empty();
    }
    try {
      boolean more = firstWaits || decoder.advance();
      firstWaits = false;
      if (!more) {
        ending = tally.ending(info.expectedFrames(), info.expectedDurationS());
        return Optional.empty();
      }
      T result = use.apply(index, (decoder.tick() - firstTick) * secondsPerTick);
      index++;
      return Optional.of(result);
    } catch (RuntimeException | OutOfMemoryError e) {
      // OpenCV and JavaCPP report a picture they cannot take, or no memory left, in this way.
      ending =
          new ClipEnding.Stopped(
              index,
              "reading stopped at a picture that could not be converted",
              "close other programs to free memory and try again; else copy the clip again");
      return Optional.empty();
    }
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
