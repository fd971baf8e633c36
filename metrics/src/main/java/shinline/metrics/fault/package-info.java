@NullMarked
package shinline.metrics.fault;

import org.jspecify.annotations.NullMarked;
