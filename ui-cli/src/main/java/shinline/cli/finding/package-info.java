/** What is kept of a measured clip, so that it is measured once. */
@NullMarked
package shinline.cli.finding;

import org.jspecify.annotations.NullMarked;
