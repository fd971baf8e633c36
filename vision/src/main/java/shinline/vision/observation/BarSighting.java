package shinline.vision.observation;

/**
 * Where the near disc of a bar was in one frame.
 *
 * @param frame number of the frame, from 0
 * @param timeS seconds from the first frame
 * @param centreX pixels of its own frame from the left edge
 * @param centreY pixels of its own frame from the top edge, down
 * @param diameterPx longer axis of its rim, pixels of its own frame
 * @param roundness shorter over longer axis, 0…1
 */
public record BarSighting(
    int frame, double timeS, double centreX, double centreY, double diameterPx, double roundness) {}
