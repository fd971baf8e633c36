package shinline.cli.doctor;

/**
 * How long a clip takes on this computer, from what its parts take.
 *
 * @param loadS seconds until the models are loaded
 * @param lookS seconds of one look of the pose model on one core, the median of several
 * @param pictureS seconds to decode one picture on one core
 * @param spread of the looks: the range of the middle half, as a share of the median
 * @param cores that work side by side
 * @param looksPerS looks the program takes in a second of the clip
 */
record ClipTime(
    double loadS, double lookS, double pictureS, double spread, int cores, double looksPerS) {

  /**
   * What else is done for a clip, start and page above all: seconds on the machine it was seen on.
   */
  private static final double REST_S = 2.5;

  /** Looks are shared with what is done beside them: the room, the outline, second looks. */
  private static final double BESIDE = 1.15;

  /** Of a clip unlike the one tried; docs/performance.md has clips of several kinds. */
  private static final double OTHER_CLIPS = 0.25;

  /** Seconds for a clip that plays {@code clipS} seconds with {@code fps} pictures in each. */
  double seconds(double clipS, double fps) {
    double looking = clipS * looksPerS * lookS * BESIDE;
    double decoding = clipS * fps * pictureS;
    // Decoding has a thread of its own, which needs a core of its own.
    double both = cores > 1 ? Math.max(looking, decoding) : looking + decoding;
    return loadS + both + REST_S;
  }

  /** How far off {@link #seconds} may be. */
  double plusMinus(double clipS, double fps) {
    return seconds(clipS, fps) * (OTHER_CLIPS + spread);
  }
}
