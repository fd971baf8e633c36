@NullMarked
package shinline.metrics.load;

import org.jspecify.annotations.NullMarked;
