package shinline.vision.clip;

/**
 * The part of a clip that is looked at.
 *
 * @param fromS seconds from the first frame, 0 or more
 * @param toS seconds from the first frame, after {@code fromS}; infinite for the clip's end
 */
public record ClipPart(double fromS, double toS) {
  public static final ClipPart WHOLE = new ClipPart(0, Double.POSITIVE_INFINITY);

  public ClipPart {
    if (!(fromS >= 0) || !(toS > fromS)) {
      throw new IllegalArgumentException("no part from " + fromS + " s to " + toS + " s");
    }
  }

  boolean holds(double timeS) {
    return timeS >= fromS && timeS <= toS;
  }
}
