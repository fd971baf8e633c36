/** Where pictures become numbers: the only package that sees vision's and metrics' points. */
@NullMarked
package shinline.cli.crossing;

import org.jspecify.annotations.NullMarked;
