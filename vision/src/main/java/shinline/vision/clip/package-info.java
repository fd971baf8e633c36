@NullMarked
package shinline.vision.clip;

import org.jspecify.annotations.NullMarked;
