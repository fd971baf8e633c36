/** An athlete's weeks as a page and as a table. */
@NullMarked
package shinline.cli.progress;

import org.jspecify.annotations.NullMarked;
