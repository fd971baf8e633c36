package shinline.vision.pose;

/**
 * One landmark as the pose model reports it.
 *
 * @param x pixels from the left edge of the upright frame, pixel centres at whole numbers
 * @param y pixels from the top edge of the upright frame, down
 * @param depth the model's own depth in pixels, negative toward the camera; poor, a hint only
 * @param visibility probability 0…1 that the landmark is in view and not hidden
 * @param presence probability 0…1 that the landmark lies inside the picture
 */
public record Keypoint(double x, double y, double depth, double visibility, double presence) {}
