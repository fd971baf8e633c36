@NullMarked
package shinline.metrics.analysis;

import org.jspecify.annotations.NullMarked;
