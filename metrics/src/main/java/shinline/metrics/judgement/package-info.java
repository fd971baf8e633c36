/** From a rep's readings and the day's target to a verdict, its reasons, and one set sentence. */
@NullMarked
package shinline.metrics.judgement;

import org.jspecify.annotations.NullMarked;
