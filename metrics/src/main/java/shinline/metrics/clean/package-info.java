@NullMarked
package shinline.metrics.clean;

import org.jspecify.annotations.NullMarked;
