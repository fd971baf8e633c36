@NullMarked
package shinline.vision;

import org.jspecify.annotations.NullMarked;
