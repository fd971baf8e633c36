/** What is next, in words and as JSON (docs/ladder.md). */
@NullMarked
package shinline.cli.advice;

import org.jspecify.annotations.NullMarked;
