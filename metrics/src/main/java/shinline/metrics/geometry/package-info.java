@NullMarked
package shinline.metrics.geometry;

import org.jspecify.annotations.NullMarked;
