@NullMarked
package shinline.metrics.correction;

import org.jspecify.annotations.NullMarked;
