@NullMarked
package shinline.cli;

import org.jspecify.annotations.NullMarked;
