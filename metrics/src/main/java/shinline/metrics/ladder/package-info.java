/**
 * The coach's ladder: steps, targets, loads at hand and the numbers of the rules (docs/ladder.md).
 * Common practice throughout; the coach's own file overrides it.
 */
@NullMarked
package shinline.metrics.ladder;

import org.jspecify.annotations.NullMarked;
