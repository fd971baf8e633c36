@NullMarked
package shinline.metrics.target;

import org.jspecify.annotations.NullMarked;
