/** The coach's sheet of a session: a table of sets, read from CSV or XLSX, and written empty. */
@NullMarked
package shinline.cli.sheet;

import org.jspecify.annotations.NullMarked;
