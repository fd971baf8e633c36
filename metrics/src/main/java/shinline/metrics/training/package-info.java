/** What was done: the sets of an athlete and what the coach noted besides (docs/record.md). */
@NullMarked
package shinline.metrics.training;

import org.jspecify.annotations.NullMarked;
