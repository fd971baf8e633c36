@NullMarked
package shinline.metrics.cleaning;

import org.jspecify.annotations.NullMarked;
