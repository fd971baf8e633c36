package shinline.vision.observation;

/**
 * A place in the upright picture.
 *
 * @param x pixels from the left edge
 * @param y pixels from the top edge, down
 */
public record PicturePoint(double x, double y) {}
