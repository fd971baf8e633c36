package shinline.cli.outcome;

import shinline.vision.pose.PoseModel;

/**
 * What a clip turned out to be once it was read to its end.
 *
 * @param fileName name without folders: a result must not tell where a coach keeps clips
 * @param sha256 of the file, lower-case hexadecimal
 * @param widthPx width of the upright picture
 * @param heightPx height of the upright picture
 * @param rotationDeg clockwise turn applied to the stored picture
 * @param frames frames decoded
 * @param durationS seconds from the first frame to the end of the last
 * @param medianFps one over the median time between frames; 0 for a single frame
 * @param variableFrameRate whether frame times spread by more than a fifth of their median
 * @param poseModel the pose model that looked at it
 */
public record ClipFacts(
    String fileName,
    String sha256,
    int widthPx,
    int heightPx,
    int rotationDeg,
    int frames,
    double durationS,
    double medianFps,
    boolean variableFrameRate,
    PoseModel poseModel) {}
