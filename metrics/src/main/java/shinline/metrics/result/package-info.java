@NullMarked
package shinline.metrics.result;

import org.jspecify.annotations.NullMarked;
