@NullMarked
package shinline.metrics.correct;

import org.jspecify.annotations.NullMarked;
