/** The back's outline: how it bows, against the same athlete's own standing. */
@NullMarked
package shinline.metrics.back;

import org.jspecify.annotations.NullMarked;
