/**
 * What frames tell beside the pose: whether the camera moved and how it is tilted, whether somebody
 * else is there, where a disc is, where the trunk ends. Pixels, y down; nothing of exercise.
 */
@NullMarked
package shinline.vision.observation;

import org.jspecify.annotations.NullMarked;
