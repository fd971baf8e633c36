package shinline.vision.clip;

/**
 * What a clip says of itself, before any frame is read.
 *
 * @param widthPx width of the upright, square-pixel picture
 * @param heightPx height of the upright, square-pixel picture
 * @param rotationDeg clockwise turn that was applied to the stored picture: 0, 90, 180 or 270
 * @param expectedFrames frames the container promises; 0 when it does not say
 * @param expectedDurationS seconds the container promises, after the slow-motion factor; 0 when it
 *     does not say
 * @param slowMotionFactor how many times slower the file plays than life; 1 for a normal clip
 */
public record ClipInfo(
    int widthPx,
    int heightPx,
    int rotationDeg,
    int expectedFrames,
    double expectedDurationS,
    double slowMotionFactor) {}
