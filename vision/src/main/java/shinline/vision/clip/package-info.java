/**
 * Clips in, upright pictures with their own times out, and clips out again. FFmpeg lives behind
 * this package: callers see only {@code Mat} pictures (BGR, 8 bits, square pixels).
 */
@NullMarked
package shinline.vision.clip;

import org.jspecify.annotations.NullMarked;
