package shinline.vision.clip;

import java.util.OptionalDouble;

/**
 * How a clip is to be read.
 *
 * @param captureFps frames a second at which the phone filmed, stated by the coach for a
 *     slow-motion clip whose file plays stretched; empty reads the file's times as they are. Range
 *     1…2000
 * @param decodeThreads threads of the decoder; 1 by default, because the pose model needs the other
 *     cores and one thread keeps memory low. Range 1…64
 */
public record ClipOptions(OptionalDouble captureFps, int decodeThreads) {

  private static final double MAX_CAPTURE_FPS = 2000;
  private static final int MAX_DECODE_THREADS = 64;

  /**
   * @throws IllegalArgumentException when a value is out of range
   */
  public ClipOptions {
    if (captureFps.isPresent()
        && !(captureFps.getAsDouble() >= 1 && captureFps.getAsDouble() <= MAX_CAPTURE_FPS)) {
      throw new IllegalArgumentException(
          "capture rate must be 1 to 2000 frames a second, was " + captureFps.getAsDouble());
    }
    if (decodeThreads < 1 || decodeThreads > MAX_DECODE_THREADS) {
      throw new IllegalArgumentException("decode threads must be 1 to 64, was " + decodeThreads);
    }
  }

  /** File times as they are, one decode thread. */
  public static ClipOptions defaults() {
    return new ClipOptions(OptionalDouble.empty(), 1);
  }

  /** The same options for a clip filmed at {@code fps} frames a second. */
  public ClipOptions capturedAt(double fps) {
    return new ClipOptions(OptionalDouble.of(fps), decodeThreads);
  }
}
