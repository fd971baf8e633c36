/** A session's pages: for the coach, for the wall, and cards for athletes. */
@NullMarked
package shinline.cli.team;

import org.jspecify.annotations.NullMarked;
