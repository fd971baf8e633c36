/** The page a coach and an athlete look at: one file, no request, readable without a script. */
@NullMarked
package shinline.cli.report;

import org.jspecify.annotations.NullMarked;
