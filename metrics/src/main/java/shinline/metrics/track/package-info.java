@NullMarked
package shinline.metrics.track;

import org.jspecify.annotations.NullMarked;
