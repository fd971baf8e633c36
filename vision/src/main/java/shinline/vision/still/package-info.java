/** Still pictures in, upright as they are to be shown. */
@NullMarked
package shinline.vision.still;

import org.jspecify.annotations.NullMarked;
