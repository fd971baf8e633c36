/** The numbers that were fitted or chosen for one pose model, each with where it comes from. */
@NullMarked
package shinline.metrics.calibration;

import org.jspecify.annotations.NullMarked;
