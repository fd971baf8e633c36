/** What is next for an athlete, from the record and the ladder (docs/ladder.md). */
@NullMarked
package shinline.metrics.advice;

import org.jspecify.annotations.NullMarked;
