@NullMarked
package shinline.metrics.kinematics;

import org.jspecify.annotations.NullMarked;
