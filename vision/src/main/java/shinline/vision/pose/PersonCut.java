package shinline.vision.pose;

/**
 * A region of one frame at the size the models look at: 0.2 MB whatever the clip's own size, so
 * that some can be kept until it is known which are worth a mask.
 */
public final class PersonCut {
  private final byte[] bgr;
  private final RegionOfInterest region;

  /**
   * @param bgr blue, green and red of each pixel, row by row; not copied
   */
  PersonCut(byte[] bgr, RegionOfInterest region) {
    this.bgr = bgr;
    this.region = region;
  }

  byte[] bgr() {
    return bgr;
  }

  RegionOfInterest region() {
    return region;
  }
}
