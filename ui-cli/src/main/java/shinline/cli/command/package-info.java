/** Thin commands: read words, call a service, print. */
@NullMarked
package shinline.cli.command;

import org.jspecify.annotations.NullMarked;
