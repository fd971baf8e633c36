/** Where the program keeps what is its own on this computer, and nobody's results. */
@NullMarked
package shinline.cli.place;

import org.jspecify.annotations.NullMarked;
