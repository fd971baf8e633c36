/** How an athlete's sessions change over the weeks, and which changes are real. */
@NullMarked
package shinline.metrics.progress;

import org.jspecify.annotations.NullMarked;
