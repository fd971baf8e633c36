/** The one place for statistics of a sample; what a library has is done by Hipparchus. */
@NullMarked
package shinline.metrics.statistics;

import org.jspecify.annotations.NullMarked;
