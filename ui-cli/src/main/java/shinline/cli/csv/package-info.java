/** Tables of text for spreadsheets and programs. */
@NullMarked
package shinline.cli.csv;

import org.jspecify.annotations.NullMarked;
