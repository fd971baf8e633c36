/** Calibrations of the pose models: the shipped ones, and their file. */
@NullMarked
package shinline.cli.calibration;

import org.jspecify.annotations.NullMarked;
