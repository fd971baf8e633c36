@NullMarked
package shinline.metrics.reps;

import org.jspecify.annotations.NullMarked;
