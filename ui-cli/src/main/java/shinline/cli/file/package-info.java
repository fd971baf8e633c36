/** Where results go, and writing them whole or not at all. */
@NullMarked
package shinline.cli.file;

import org.jspecify.annotations.NullMarked;
