/** The result formats of docs/result-format.md. */
@NullMarked
package shinline.cli.format;

import org.jspecify.annotations.NullMarked;
