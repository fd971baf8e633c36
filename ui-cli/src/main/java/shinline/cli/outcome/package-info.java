/** What a clip came to, and how it ends for whoever asked: results, progress, exit codes. */
@NullMarked
package shinline.cli.outcome;

import org.jspecify.annotations.NullMarked;
