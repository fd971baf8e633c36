package shinline.vision.pose;

/**
 * A person the detector saw. The box is about the face and shoulders; the region about the body.
 *
 * @param leftPx left edge of the box, pixels of the upright frame
 * @param topPx top edge of the box
 * @param widthPx width of the box
 * @param heightPx height of the box
 * @param score probability 0.5…1 that it is a person
 * @param region where to look for the landmarks
 */
public record DetectedPerson(
    double leftPx,
    double topPx,
    double widthPx,
    double heightPx,
    double score,
    RegionOfInterest region) {}
