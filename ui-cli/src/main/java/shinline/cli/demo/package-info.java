/** A squad that does not exist, to look at every page with. */
@NullMarked
package shinline.cli.demo;

import org.jspecify.annotations.NullMarked;
