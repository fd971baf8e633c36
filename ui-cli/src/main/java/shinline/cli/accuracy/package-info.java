/** Measures how good the measures are: results against clips whose truth is known. */
@NullMarked
package shinline.cli.accuracy;

import org.jspecify.annotations.NullMarked;
