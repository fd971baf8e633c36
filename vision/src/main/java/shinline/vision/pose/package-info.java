@NullMarked
package shinline.vision.pose;

import org.jspecify.annotations.NullMarked;
