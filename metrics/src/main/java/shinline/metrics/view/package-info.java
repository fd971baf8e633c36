@NullMarked
package shinline.metrics.view;

import org.jspecify.annotations.NullMarked;
