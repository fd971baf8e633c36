package shinline.metrics.track;

/**
 * One point in one frame as the pose model saw it.
 *
 * @param x pixels from the left edge of the upright picture
 * @param y pixels above the bottom edge of the upright picture (up is positive)
 * @param confidence the model's own 0…1 probability that the point is in view
 */
public record RawSighting(double x, double y, double confidence) {}
