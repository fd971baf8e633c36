/** What a command is given from outside: streams, paint, clip checker. */
@NullMarked
package shinline.cli.context;

import org.jspecify.annotations.NullMarked;
