/** What is printed for a person. */
@NullMarked
package shinline.cli.text;

import org.jspecify.annotations.NullMarked;
