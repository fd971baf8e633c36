/** From a rep's readings and the day's target to a verdict, its findings, and the set in short. */
@NullMarked
package shinline.metrics.judgement;

import org.jspecify.annotations.NullMarked;
