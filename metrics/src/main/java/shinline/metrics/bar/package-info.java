/** The bar on the back: its end's path, its speed, and what it tells of the trunk. */
@NullMarked
package shinline.metrics.bar;

import org.jspecify.annotations.NullMarked;
