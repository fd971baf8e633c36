/** The work of one clip, free of any command line. */
@NullMarked
package shinline.cli.check;

import org.jspecify.annotations.NullMarked;
