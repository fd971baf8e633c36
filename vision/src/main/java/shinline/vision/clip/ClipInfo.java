package shinline.vision.clip;

import java.util.OptionalDouble;

/**
 * What a clip says of itself, before any frame is read.
 *
 * @param widthPx width of the upright, square-pixel picture
 * @param heightPx height of the upright, square-pixel picture
 * @param rotationDeg clockwise turn that was applied to the stored picture: 0, 90, 180 or 270
 * @param expectedFrames frames the container promises; 0 when it does not say
 * @param expectedDurationS seconds the container promises, after the slow-motion factor; 0 when it
 *     does not say
 * @param slowMotionFactor how many times slower the file plays than life; 1 for a normal clip
 * @param codec short name of the video codec, such as {@code h264} or {@code hevc}
 * @param bitsPerSample bits of one colour sample as stored: 8 or 10 from a phone
 * @param pixelAspect width of a stored pixel over its height, already applied; 1 for most clips
 * @param playbackFps average frames a second the file plays at, before the slow-motion factor; 0
 *     when it does not say. An average: never a clock
 * @param captureFpsTag frames a second the phone says it filmed at, if it says so
 */
public record ClipInfo(
    int widthPx,
    int heightPx,
    int rotationDeg,
    int expectedFrames,
    double expectedDurationS,
    double slowMotionFactor,
    String codec,
    int bitsPerSample,
    double pixelAspect,
    double playbackFps,
    OptionalDouble captureFpsTag) {

  /**
   * Capture rates this many times the playback rate are taken as a sign of slow motion. Below it
   * the tag is the phone's rounding; slow motion starts at twice the playback rate.
   */
  private static final double SLOW_MOTION_HINT_RATIO = 1.5;

  /**
   * The capture rate to ask the coach about: the file says it was filmed much faster than it plays,
   * and no capture rate was given.
   *
   * @return frames a second, or empty when nothing hints at slow motion or it is already applied
   */
  public OptionalDouble slowMotionHint() {
    boolean hinted =
        slowMotionFactor == 1
            && playbackFps > 0
            && captureFpsTag.orElse(0) > SLOW_MOTION_HINT_RATIO * playbackFps;
    return hinted ? captureFpsTag : OptionalDouble.empty();
  }
}
