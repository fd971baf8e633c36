package shinline.vision.clip;

import java.util.OptionalDouble;
import shinline.vision.library.Cores;

/**
 * How a clip is to be read.
 *
 * @param captureFps frames a second at which the phone filmed, stated by the coach for a
 *     slow-motion clip whose file plays stretched; empty reads the file's times as they are. Range
 *     1…2000
 * @param decodeThreads threads of the decoder; 1 by default on two cores, because the pose model
 *     needs the other and one thread keeps memory low. Range 1…64
 * @param quarterTurnsMore clockwise quarter turns after those the file asks for, 0…3; for a file
 *     whose own tag is wrong or missing, so that people stand on their heads or lie in it
 * @param limits what is refused as too much
 */
public record ClipOptions(
    OptionalDouble captureFps, int decodeThreads, int quarterTurnsMore, ClipLimits limits) {

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
    if (quarterTurnsMore < 0 || quarterTurnsMore > 3) {
      throw new IllegalArgumentException("quarter turns must be 0 to 3, were " + quarterTurnsMore);
    }
  }

  /** As the file asks to be shown. */
  public ClipOptions(OptionalDouble captureFps, int decodeThreads) {
    this(captureFps, decodeThreads, 0, ClipLimits.USUAL);
  }

  /** File times as they are, and decode threads as the pose model leaves cores free. */
  public static ClipOptions defaults() {
    return new ClipOptions(OptionalDouble.empty(), Cores.here().forDecoding());
  }

  /** The same options with so many clockwise quarter turns more. */
  public ClipOptions turnedMore(int quarterTurns) {
    return new ClipOptions(
        captureFps, decodeThreads, Math.floorMod(quarterTurnsMore + quarterTurns, 4), limits);
  }

  /** The same options with other limits. */
  public ClipOptions within(ClipLimits other) {
    return new ClipOptions(captureFps, decodeThreads, quarterTurnsMore, other);
  }
}
