/** What a body can do, and what is therefore no sighting of one. */
@NullMarked
package shinline.metrics.plausibility;

import org.jspecify.annotations.NullMarked;
