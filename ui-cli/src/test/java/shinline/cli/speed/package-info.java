/** How long a check takes, measured by one command; nothing here fails for being slow. */
@NullMarked
package shinline.cli.speed;

import org.jspecify.annotations.NullMarked;
