package shinline.vision.clip;

import org.bytedeco.opencv.opencv_core.Mat;

/**
 * One picture of a clip.
 *
 * @param index 0-based place among all pictures of the clip, in the order they are shown
 * @param timeS seconds since the clip's first picture, from the file's own time stamp of this
 *     picture, divided by the slow-motion factor; strictly rising
 * @param image the upright picture: BGR, 8 bits, square pixels. It belongs to the clip and is
 *     overwritten by the next read
 */
public record Frame(int index, double timeS, Mat image) {}
