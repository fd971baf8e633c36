/** Two results of one set against each other, and a result against what somebody measured. */
@NullMarked
package shinline.cli.comparison;

import org.jspecify.annotations.NullMarked;
