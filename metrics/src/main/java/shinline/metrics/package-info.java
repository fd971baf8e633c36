@NullMarked
package shinline.metrics;

import org.jspecify.annotations.NullMarked;
