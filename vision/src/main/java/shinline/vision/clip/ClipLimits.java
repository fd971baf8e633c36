package shinline.vision.clip;

/**
 * How much a clip may ask of the computer. A damaged or strange file may promise hours or pictures
 * of any size; without limits one file would hold up a whole evening's work.
 *
 * @param longestS seconds from the first picture to the last, at most; after the slow-motion factor
 * @param longestGapS seconds from one picture to the next, at most; after the slow-motion factor
 * @param mostPixels pixels of one upright picture, at most; up to {@value #ANY_PICTURE}
 */
public record ClipLimits(double longestS, double longestGapS, long mostPixels) {

  /** Of the largest picture that can be handled at all, 16384 × 16384. */
  public static final long ANY_PICTURE = 1L << 28;

  /**
   * An hour: a whole evening left running. Half a minute: a phone that drops pictures makes up for
   * it within a second, and what is longer is a fault of the file. 8192 × 8192: 8K film (33
   * million) passes, and one picture in memory stays under 200 MB.
   */
  public static final ClipLimits USUAL = new ClipLimits(3600, 30, 1L << 26);

  /** For a clip that has been read before, within its limits. */
  public static final ClipLimits NONE =
      new ClipLimits(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, ANY_PICTURE);

  /**
   * @throws IllegalArgumentException when a value is out of range
   */
  public ClipLimits {
    if (!(longestS > 0) || !(longestGapS > 0)) {
      throw new IllegalArgumentException("no time allowed: " + longestS + " s, " + longestGapS);
    }
    if (mostPixels < 1 || mostPixels > ANY_PICTURE) {
      throw new IllegalArgumentException("1 to " + ANY_PICTURE + " pixels, not " + mostPixels);
    }
  }
}
