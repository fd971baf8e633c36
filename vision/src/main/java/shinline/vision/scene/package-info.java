/**
 * What the room tells: which way is up, whether the camera was still, and discs of known size.
 *
 * <p>Frames come in as OpenCV pictures (8-bit BGR, upright); everything that goes out is a small
 * type of this package.
 */
@NullMarked
package shinline.vision.scene;

import org.jspecify.annotations.NullMarked;
