package shinline.cli.crossing;

/**
 * The one place where y is turned over: rows of a picture count down from its top, heights of
 * metrics' points count up from its bottom row.
 *
 * @param heightPx height of the upright picture
 */
public record PictureAxis(int heightPx) {

  /** How high above the bottom row a row is, pixels, + up. */
  public double heightOf(double row) {
    return heightPx - 1 - row;
  }

  /** The row, from the top and down, of a height above the bottom row. */
  public double rowOf(double height) {
    return heightPx - 1 - height;
  }
}
