package shinline.vision.scene;

/**
 * The rectangle of the picture in which the athlete is, to be left out of every look at the room.
 *
 * @param left pixels from the left edge of the upright frame
 * @param top pixels from the top edge, down
 * @param width pixels, greater than 0
 * @param height pixels, greater than 0
 */
public record PersonBox(double left, double top, double width, double height) {

  /** Checks the size. */
  public PersonBox {
    if (!(width > 0 && height > 0)) {
      throw new IllegalArgumentException(
          "person box must have a size, got " + width + " x " + height + " px");
    }
  }

  /** Whether the point (pixels) lies in the box grown on every side by {@code margin} pixels. */
  boolean contains(double x, double y, double margin) {
    return x >= left - margin
        && x <= left + width + margin
        && y >= top - margin
        && y <= top + height + margin;
  }

  /** The same box in a picture that is {@code factor} times as large. */
  PersonBox scaled(double factor) {
    return new PersonBox(left * factor, top * factor, width * factor, height * factor);
  }
}
