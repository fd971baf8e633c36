@NullMarked
package shinline.metrics.interval;

import org.jspecify.annotations.NullMarked;
