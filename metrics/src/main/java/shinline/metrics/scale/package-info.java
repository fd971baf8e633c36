@NullMarked
package shinline.metrics.scale;

import org.jspecify.annotations.NullMarked;
