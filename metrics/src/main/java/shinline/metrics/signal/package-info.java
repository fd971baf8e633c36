@NullMarked
package shinline.metrics.signal;

import org.jspecify.annotations.NullMarked;
